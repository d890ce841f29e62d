package org.brakerules.harness.sheet.drawing;

/**
 * A number beside a drawing, with the line that leads to its part.
 *
 * @param index which of the parts it is
 * @param spot what it points at
 * @param number where the number stands
 * @param part where the line ends
 */
public record Callout(int index, Spot spot, Point number, Point part) {}
