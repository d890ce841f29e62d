package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One step at one wheel end, axle or vehicle. There is one of each, so that identity tells them.
 */
final class Spot {

  /**
   * What comes first where the needs leave it open: the earlier phase, in it the axle in front, and
   * there the order of the table, both ends of the axle side by side.
   */
  static final Comparator<Spot> ORDER =
      Comparator.comparing((Spot spot) -> spot.row.phase())
          .thenComparing(spot -> spot.area.axle())
          .thenComparing(spot -> spot.row.rank())
          .thenComparing(spot -> spot.area.end());

  private final StepRow row;
  private final Area area;
  private final List<Spot> needs = new ArrayList<>();

  Spot(StepRow row, Area area) {
    this.row = row;
    this.area = area;
  }

  StepRow row() {
    return row;
  }

  Area area() {
    return area;
  }

  boolean isAt(Area other) {
    return area.equals(other);
  }

  /** The spots that come before it, whether they are in the plan or not. */
  List<Spot> needs() {
    return needs;
  }

  void addNeed(Spot other) {
    needs.add(other);
  }
}
