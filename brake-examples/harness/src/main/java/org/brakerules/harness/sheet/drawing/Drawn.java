package org.brakerules.harness.sheet.drawing;

import java.util.Optional;

/**
 * One shape of a drawing, in black on white.
 *
 * @param part the part it belongs to; empty if no decision speaks of it
 * @param outline its edge
 * @param fill white, silver, gray, black or none
 * @param width the width of its line
 * @param hidden whether it lies behind other parts, and so is dashed
 */
public record Drawn(
    Optional<Spot> part, Outline outline, String fill, double width, boolean hidden) {

  Drawn mirrored(double axis) {
    return new Drawn(part, outline.mirrored(axis), fill, width, hidden);
  }
}
