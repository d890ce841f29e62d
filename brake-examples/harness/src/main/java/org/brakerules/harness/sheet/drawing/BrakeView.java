package org.brakerules.harness.sheet.drawing;

import java.util.List;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.reading.Station;

/**
 * The brake seen from the wheel, with the drum cut away and the brake released. It is drawn as a
 * left brake with the cam behind the axle; the right one is its mirror image but for the S, which
 * goes by the hand of the shaft alone.
 */
final class BrakeView {

  static final Point AXLE = new Point(200, 195);

  private static final double CAM_FROM_AXLE = 96;

  /** Where the cam of a left brake turns. */
  static final Point CAM = AXLE.plus(CAM_FROM_AXLE, 0);

  static final double DRUM = 150;
  static final double BORE = 140;

  private static final double LINING_OUT = 137;
  private static final double TABLE = 125;
  private static final double WEB = 96;

  private static final Rail TOP = Rail.level(17, 60, 340);
  private static final Rail BOTTOM = Rail.level(373, 60, 340);
  private static final Rail ANCHORS = Rail.upright(16, 40, 370);
  private static final Rail CAM_END = Rail.upright(384, 40, 370);
  private static final Rail INSIDE = Rail.upright(AXLE.x() - 34, 115, 275);

  private final Sketch sketch;

  private BrakeView(Sketch sketch) {
    this.sketch = sketch;
  }

  /**
   * Draws it as a left brake.
   *
   * @param hand the hand of the shaft as this drawing shows it
   */
  static void draw(Sketch sketch, Hand hand) {
    BrakeView view = new BrakeView(sketch);
    view.drum();
    view.spider();
    view.half(Station.UPPER, -1);
    view.half(Station.LOWER, 1);
    view.springs();
    view.cam(hand);
  }

  private void drum() {
    Spot shield = Spot.of(PartKind.DUST_SHIELD);
    if (sketch.wants(shield)) {
      sketch.hidden(shield, Outline.disc(AXLE, DRUM + 6));
      sketch.grip(shield, AXLE.around(DRUM + 6, 159), ANCHORS);
    }
    Spot drum = Spot.of(PartKind.DRUM);
    sketch.part(drum, Outline.ring(AXLE, BORE, DRUM), "silver", 1);
    sketch.grip(drum, AXLE.around((BORE + DRUM) / 2, 122), TOP);
  }

  private void spider() {
    Spot spider = Spot.of(PartKind.SPIDER);
    sketch.part(
        spider,
        Outline.shape(
            AXLE.plus(-124, -40),
            AXLE.plus(-50, -54),
            AXLE.plus(20, -54),
            AXLE.plus(80, -20),
            AXLE.plus(80, 20),
            AXLE.plus(20, 54),
            AXLE.plus(-50, 54),
            AXLE.plus(-124, 40)),
        "silver",
        1);
    sketch.other(Outline.disc(AXLE, 30), "white", 1);
    sketch.other(Outline.disc(AXLE, 14), "white", 1);
    sketch.grip(spider, AXLE.plus(6, -44), INSIDE);
  }

  /** One shoe with what sits on it; the side is -1 above and 1 below. */
  private void half(Station station, int side) {
    shoe(station, side);
    anchor(station, side);
    roller(station, side);
    Spot pin = new Spot(PartKind.RETURN_SPRING_PIN, station);
    if (sketch.wants(pin)) {
      sketch.part(pin, Outline.disc(springPin(side), 4.5), "white", 1.5);
      sketch.grip(pin, springPin(side), end(side));
    }
  }

  private static Rail end(int side) {
    return side < 0 ? TOP : BOTTOM;
  }

  private static Point roller(int side) {
    return CAM.plus(0, side * CamProfile.AT_REST);
  }

  private static Point anchor(int side) {
    return AXLE.plus(-106, side * 26);
  }

  private static Point springPin(int side) {
    return AXLE.around(106, -side * 70);
  }

  private void shoe(Station station, int side) {
    double cam = Math.toDegrees(Math.atan2(CamProfile.AT_REST, CAM_FROM_AXLE));
    double anchor = 180 - Math.toDegrees(Math.atan2(26, 106));
    Spot shoe = new Spot(PartKind.SHOE, station);
    sketch.part(shoe, Outline.band(AXLE, WEB, TABLE, -side * cam, -side * anchor), "white", 1.5);
    sketch.other(Outline.arc(AXLE, TABLE - 4, -side * (cam + 6), -side * (anchor - 6)), "none", 1);
    sketch.grip(shoe, AXLE.around(110, -side * 106), end(side));
    Spot lining = new Spot(PartKind.LINING, station);
    sketch.part(lining, Outline.band(AXLE, TABLE, LINING_OUT, -side * 28, -side * 152), "gray", 1);
    sketch.grip(lining, AXLE.around(131, -side * 90), end(side));
  }

  private void anchor(Station station, int side) {
    Spot bushing = new Spot(PartKind.ANCHOR_BUSHING, station);
    if (sketch.wants(bushing)) {
      sketch.part(bushing, Outline.ring(anchor(side), 9, 14), "gray", 1);
      sketch.grip(bushing, anchor(side).around(11.5, side < 0 ? 110 : 250), ANCHORS);
    }
    Spot pin = new Spot(PartKind.ANCHOR_PIN, station);
    sketch.part(pin, Outline.disc(anchor(side), 9), "white", 1.5);
    sketch.grip(pin, anchor(side), ANCHORS);
    Spot retainer = new Spot(PartKind.ANCHOR_PIN_RETAINER, station);
    if (sketch.wants(retainer)) {
      double middle = side < 0 ? 230 : 130;
      sketch.part(retainer, Outline.arc(anchor(side), 17.5, middle - 60, middle + 60), "none", 2.5);
      sketch.grip(retainer, anchor(side).around(17.5, middle - side * 30), ANCHORS);
    }
  }

  private void roller(Station station, int side) {
    Spot clip = new Spot(PartKind.ROLLER_CLIP, station);
    double middle = side < 0 ? 105 : 255;
    sketch.part(clip, Outline.arc(roller(side), 16.5, middle - 65, middle + 65), "none", 2.5);
    sketch.grip(clip, roller(side).around(16.5, middle + side * 45), CAM_END);
    Spot roller = new Spot(PartKind.CAM_ROLLER, station);
    sketch.part(roller, Outline.disc(roller(side), CamProfile.ROLLER), "white", 1.5);
    sketch.other(Outline.disc(roller(side), 3), "white", 1);
    sketch.grip(roller, roller(side).plus(6, side * 3), CAM_END);
  }

  private void springs() {
    Spot pull = Spot.of(PartKind.RETURN_SPRING);
    Point top = springPin(-1);
    sketch.part(pull, Outline.spring(top, 2 * (AXLE.y() - top.y()), 7), "none", 1.5);
    sketch.grip(pull, new Point(top.x(), AXLE.y() + 50), INSIDE);
    Spot hold = Spot.of(PartKind.SHOE_RETAINING_SPRING);
    Point web = AXLE.plus(-80, -60);
    sketch.part(hold, Outline.spring(web, 120, 5), "none", 1.5);
    for (int side : List.of(-1, 1)) {
      sketch.other(Outline.disc(AXLE.plus(-80, side * 60), 3), "black", 1);
    }
    sketch.grip(hold, AXLE.plus(-80, 46), INSIDE);
  }

  /** With the hand unknown only the round that the rollers rest on is known. */
  private void cam(Hand hand) {
    Spot shaft = Spot.of(PartKind.CAMSHAFT);
    double round = CamProfile.AT_REST - CamProfile.ROLLER;
    if (hand == Hand.UNKNOWN) {
      sketch.hidden(shaft, Outline.disc(CAM, round));
    } else {
      sketch.part(shaft, Outline.shape(CamProfile.of(CAM, hand)), "white", 2);
      double half = hand == Hand.LEFT ? 34 : -34;
      sketch.turn(CAM, 45, 180 - half, 180 + half);
    }
    sketch.grip(shaft, CAM.plus(hand == Hand.UNKNOWN ? round : 0, 0), CAM_END);
  }
}
