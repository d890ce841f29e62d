package org.brakerules.harness.sheet.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.brakerules.model.part.PartKind;

/** One view being drawn: what is drawn later lies above what is drawn earlier. */
final class Sketch {

  private final Set<Spot> wanted;
  private final List<Drawn> drawn = new ArrayList<>();
  private final Map<Spot, Grip> grips = new LinkedHashMap<>();

  /**
   * Starts a view.
   *
   * @param wanted the parts that get a number; some parts are drawn only if they are among them
   */
  Sketch(Set<Spot> wanted) {
    this.wanted = wanted;
  }

  boolean wants(Spot spot) {
    return wanted.contains(spot);
  }

  boolean wants(PartKind kind) {
    return wanted.stream().anyMatch(spot -> spot.kind() == kind);
  }

  void part(Spot spot, Outline outline, String fill, double width) {
    drawn.add(new Drawn(Optional.of(spot), outline, fill, width, false));
  }

  void hidden(Spot spot, Outline outline) {
    drawn.add(new Drawn(Optional.of(spot), outline, "none", 1, true));
  }

  /** Something that no decision speaks of. */
  void other(Outline outline, String fill, double width) {
    drawn.add(new Drawn(Optional.empty(), outline, fill, width, false));
  }

  /** Something of which only the place is known. */
  void vague(Outline outline) {
    drawn.add(new Drawn(Optional.empty(), outline, "white", 1, true));
  }

  /** An arrow along a piece of a circle; its head is at the second angle. */
  void turn(Point centre, double radius, double from, double to) {
    other(Outline.arc(centre, radius, from, to), "none", 1.5);
    double way = Math.signum(to - from);
    double back = Math.toDegrees(9 / radius) * way;
    other(
        Outline.shape(
            centre.around(radius, to + back * 0.6),
            centre.around(radius - 4.5, to - back * 0.4),
            centre.around(radius + 4.5, to - back * 0.4)),
        "black",
        1);
  }

  void grip(Spot spot, Point point, Rail rail) {
    grips.put(spot, new Grip(point, rail));
  }

  List<Drawn> drawn() {
    return List.copyOf(drawn);
  }

  Map<Spot, Grip> grips() {
    return Map.copyOf(grips);
  }

  /** The view as a mirror shows it. */
  Sketch mirrored(double axis) {
    Sketch mirrored = new Sketch(wanted);
    drawn.forEach(one -> mirrored.drawn.add(one.mirrored(axis)));
    grips.forEach((spot, grip) -> mirrored.grips.put(spot, grip.mirrored(axis)));
    return mirrored;
  }
}
