package org.brakerules.harness.sheet.drawing;

import org.brakerules.model.part.Hand;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.reading.Station;

/**
 * Adjuster, push rod and chamber seen along the camshaft, from the wheel as well and released. It
 * is drawn for a left-hand shaft: the rod pushes the upright arm to the left, against the clock. A
 * right-hand shaft has the mirror image.
 */
final class ArmView {

  static final double LEFT = 408;
  static final double RIGHT = 782;

  private static final Point SHAFT = new Point(474, 146);
  private static final double ARM = 82;

  /** How far the arm leans toward the chamber while the brake is released. */
  private static final double LEAN = 14;

  private static final Point PIN = SHAFT.around(ARM, 90 - LEAN);
  private static final Point LINK = PIN.plus(30, 0);

  private static final Rail TOP = Rail.level(17, 440, 768);
  private static final Rail BELOW = Rail.level(118, 524, 768);
  private static final Rail BESIDE = Rail.upright(424, 60, 172);

  private final Sketch sketch;

  private ArmView(Sketch sketch) {
    this.sketch = sketch;
  }

  /** Draws it for a left-hand shaft; the arrow is left out where the hand is not known. */
  static void draw(Sketch sketch, Hand hand) {
    ArmView view = new ArmView(sketch);
    view.chamber();
    view.rod();
    view.controlArm();
    view.arm();
    view.pins();
    if (hand != Hand.UNKNOWN) {
      sketch.turn(SHAFT, ARM + 2, 101, 124);
    }
  }

  private void chamber() {
    double y = PIN.y();
    Spot chamber = Spot.of(PartKind.CHAMBER);
    sketch.part(
        chamber,
        Outline.shape(
            new Point(610, y - 14),
            new Point(622, y - 30),
            new Point(662, y - 30),
            new Point(662, y + 30),
            new Point(622, y + 30),
            new Point(610, y + 14)),
        "white",
        1.5);
    sketch.grip(chamber, new Point(636, y + 18), BELOW);
    Spot spring = Spot.of(PartKind.SPRING_BRAKE);
    if (sketch.wants(spring)) {
      sketch.part(spring, Outline.box(662, y - 28, 66, 56), "silver", 1.5);
      sketch.other(Outline.box(657, y - 34, 10, 68), "white", 1);
      sketch.grip(spring, new Point(698, y + 14), BELOW);
    }
    Spot hose = Spot.of(PartKind.HOSE);
    Point port = new Point(640, y - 30);
    sketch.part(
        hose,
        Outline.line(
            port,
            port.plus(0, -6),
            port.plus(10, -12),
            port.plus(96, -12),
            port.plus(106, -2),
            port.plus(106, 58)),
        "none",
        4);
    sketch.grip(hose, port.plus(106, 46), BELOW);
  }

  private void rod() {
    double y = PIN.y();
    Spot rod = Spot.of(PartKind.PUSH_ROD);
    sketch.part(rod, Outline.box(540, y - 4, 70, 8), "white", 1.5);
    sketch.grip(rod, new Point(582, y), BELOW);
    Spot clevis = Spot.of(PartKind.CLEVIS);
    sketch.part(clevis, Outline.box(PIN.x() - 12, y - 12, 56, 24), "white", 1.5);
    sketch.grip(clevis, new Point(PIN.x() + 15, y - 7), TOP);
    Spot nut = Spot.of(PartKind.JAM_NUT);
    sketch.part(nut, Outline.box(PIN.x() + 45, y - 9, 9, 18), "silver", 1.5);
    sketch.grip(nut, new Point(PIN.x() + 49.5, y - 4), TOP);
  }

  private void arm() {
    Spot adjuster = Spot.of(PartKind.SLACK_ADJUSTER);
    Point end = PIN.around(9, 90 - LEAN);
    sketch.part(
        adjuster,
        Outline.shape(
            SHAFT.around(19, 180 - LEAN),
            end.around(10, 180 - LEAN),
            end.around(10, -LEAN),
            SHAFT.around(19, -LEAN)),
        "white",
        1.5);
    sketch.part(adjuster, Outline.disc(SHAFT, 25), "white", 1.5);
    sketch.other(Outline.disc(SHAFT, 11), "silver", 1);
    sketch.grip(adjuster, SHAFT.plus(-14, 10), BESIDE);
    Spot fitting = new Spot(PartKind.GREASE_FITTING, Station.ADJUSTER);
    if (sketch.wants(fitting)) {
      Point side = SHAFT.around(25, 150);
      sketch.part(fitting, Outline.box(side.x() - 7, side.y() - 4, 8, 8), "silver", 1);
      sketch.grip(fitting, side.plus(-3, 0), BESIDE);
    }
  }

  private void controlArm() {
    Spot control = Spot.of(PartKind.CONTROL_ARM);
    if (sketch.wants(control)) {
      sketch.part(control, Outline.box(SHAFT.x() + 10, SHAFT.y() + 8, 66, 9), "silver", 1);
      sketch.other(Outline.box(SHAFT.x() + 76, SHAFT.y() + 4, 8, 26), "white", 1);
      sketch.grip(control, SHAFT.plus(62, 12.5), BELOW);
    }
  }

  private void pins() {
    Spot small = new Spot(PartKind.CLEVIS_PIN, Station.SMALL);
    if (sketch.wants(small)) {
      Point ear = SHAFT.around(29, 36);
      sketch.other(Outline.disc(ear, 4), "white", 1.5);
      sketch.other(Outline.line(LINK, ear), "none", 3);
      pin(Station.SMALL, LINK, 4, 1);
    }
    pin(Station.LARGE, PIN, 6, -1);
  }

  /**
   * A pin seen from its end, with the spread legs of its cotter above it where the side is -1,
   * below it where it is 1.
   */
  private void pin(Station station, Point centre, double radius, int side) {
    Spot cotter = new Spot(PartKind.COTTER_PIN, station);
    Spot pin = new Spot(PartKind.CLEVIS_PIN, station);
    sketch.part(pin, Outline.disc(centre, radius), "white", 1.5);
    Rail rail = side < 0 ? TOP : BELOW;
    Point leg = centre.plus(-8, side * (radius + 9));
    sketch.part(
        cotter,
        Outline.line(leg, centre.plus(0, side * 2), centre.plus(8, side * (radius + 9))),
        "none",
        2);
    sketch.grip(cotter, leg, rail);
    sketch.grip(pin, centre.plus(1.5, -side * 2), rail);
  }
}
