package org.brakerules.harness.sheet.drawing;

import org.brakerules.model.part.PartKind;
import org.brakerules.model.reading.Station;

/** The hub, cut through, above the middle of the spindle: the wheel on the left. */
final class HubView {

  /** The middle of the spindle. */
  private static final double Y = 445;

  private static final Rail ABOVE = Rail.level(Y - 57, 424, 640);

  private HubView() {}

  static void draw(Sketch sketch) {
    spindle(sketch);
    hub(sketch);
    bearing(sketch, Station.OUTER, 446, Y - 20, 18, 11);
    bearing(sketch, Station.INNER, 532, Y - 25, 20, 12);
    part(sketch, Spot.of(PartKind.WHEEL_SEAL), 557, Y - 25, 7, 10, "black");
    part(sketch, Spot.of(PartKind.TONE_RING), 558, Y - 41, 8, 10, "gray");
    part(sketch, Spot.of(PartKind.WHEEL_SPEED_SENSOR), 569, Y - 40, 34, 8, "white");
  }

  private static void spindle(Sketch sketch) {
    sketch.other(
        Outline.shape(
            new Point(424, Y),
            new Point(424, Y - 9),
            new Point(478, Y - 9),
            new Point(530, Y - 13),
            new Point(556, Y - 13),
            new Point(568, Y - 15),
            new Point(576, Y - 24),
            new Point(606, Y - 24),
            new Point(606, Y)),
        "white",
        1);
    sketch.vague(Outline.line(new Point(414, Y), new Point(618, Y)));
  }

  private static void hub(Sketch sketch) {
    Spot hub = Spot.of(PartKind.HUB);
    sketch.part(
        hub,
        Outline.shape(
            new Point(442, Y - 27),
            new Point(480, Y - 27),
            new Point(480, Y - 40),
            new Point(490, Y - 40),
            new Point(490, Y - 31),
            new Point(566, Y - 31),
            new Point(566, Y - 25),
            new Point(530, Y - 25),
            new Point(522, Y - 20),
            new Point(442, Y - 20)),
        "silver",
        1);
    sketch.grip(hub, new Point(500, Y - 25), ABOVE);
  }

  /** Drawn in any case: without it the hub would hang in the air. */
  private static void bearing(
      Sketch sketch, Station station, double x, double y, double width, double height) {
    Spot bearing = new Spot(PartKind.WHEEL_BEARING, station);
    sketch.part(bearing, Outline.box(x, y, width, height), "white", 1);
    sketch.other(Outline.line(new Point(x, y + height), new Point(x + width, y)), "none", 0.7);
    sketch.grip(bearing, new Point(x + 5, y + 4), ABOVE);
  }

  private static void part(
      Sketch sketch, Spot spot, double x, double y, double width, double height, String fill) {
    if (sketch.wants(spot)) {
      sketch.part(spot, Outline.box(x, y, width, height), fill, 1);
      sketch.grip(spot, new Point(x + width / 2, y + 3), ABOVE);
    }
  }
}
