package org.brakerules.harness.sheet;

import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.reading.Station;

/**
 * Where each part lies in the picture of the wheel end: on the left the brake seen from the wheel,
 * on the right shaft, adjuster and chamber seen from the side.
 */
final class PartPlaces {

  /**
   * A point of the picture.
   *
   * @param x from the left
   * @param y from the top
   */
  record Point(int x, int y) {}

  private PartPlaces() {}

  /** The point of a part. */
  static Point of(Place place) {
    return beside(point(place.kind(), place.station()), place.number());
  }

  /** A second part of the same place stands below the first. */
  private static Point beside(Point point, int number) {
    return new Point(point.x(), point.y() + 26 * (number - 1));
  }

  private static Point point(PartKind kind, Station station) {
    boolean upper = station == Station.UPPER;
    boolean head = station == Station.HEAD_END;
    return switch (kind) {
      case DRUM -> new Point(76, 66);
      case DUST_SHIELD -> new Point(34, 214);
      case SPIDER -> new Point(150, 214);
      case LINING -> upper ? new Point(212, 46) : new Point(212, 382);
      case SHOE -> upper ? new Point(176, 84) : new Point(176, 344);
      case SHOE_RETAINING_SPRING -> new Point(126, 214 - 44);
      case ANCHOR_PIN -> upper ? new Point(92, 176) : new Point(92, 252);
      case ANCHOR_BUSHING -> upper ? new Point(64, 148) : new Point(64, 280);
      case ANCHOR_PIN_RETAINER -> upper ? new Point(118, 140) : new Point(118, 288);
      case RETURN_SPRING -> new Point(268, 214);
      case RETURN_SPRING_PIN -> upper ? new Point(268, 116) : new Point(268, 312);
      case CAM_ROLLER -> upper ? new Point(322, 158) : new Point(322, 270);
      case ROLLER_CLIP -> upper ? new Point(322, 128) : new Point(322, 300);
      case CAMSHAFT -> new Point(360, 214);
      case HEAD_WASHER -> new Point(440, 250);
      case CAMSHAFT_SEAL -> head ? new Point(468, 250) : new Point(646, 250);
      case CAMSHAFT_BUSHING -> head ? new Point(496, 178) : new Point(618, 178);
      case CAMSHAFT_BRACKET -> new Point(557, 250);
      case GREASE_FITTING ->
          switch (station) {
            case HEAD_END -> new Point(496, 150);
            case SPLINE_END -> new Point(618, 150);
            case ADJUSTER -> new Point(742, 150);
            default -> new Point(557, 164);
          };
      case SPACER -> head ? new Point(440, 278) : new Point(674, 250);
      case SHIM -> head ? new Point(440, 304) : new Point(734, 250);
      case SNAP_RING -> head ? new Point(440, 330) : new Point(762, 250);
      case SLACK_ADJUSTER -> new Point(704, 178);
      case CONTROL_ARM -> new Point(742, 118);
      case CLEVIS_PIN -> station == Station.SMALL ? new Point(724, 92) : new Point(704, 66);
      case COTTER_PIN -> station == Station.SMALL ? new Point(752, 92) : new Point(732, 66);
      case CLEVIS -> new Point(676, 38);
      case JAM_NUT -> new Point(648, 38);
      case PUSH_ROD -> new Point(620, 92);
      case CHAMBER -> new Point(552, 66);
      case SPRING_BRAKE -> new Point(486, 66);
      case HOSE -> new Point(552, 24);
      case HUB -> new Point(440, 382);
      case WHEEL_SEAL -> new Point(480, 382);
      case WHEEL_BEARING -> station == Station.INNER ? new Point(520, 382) : new Point(560, 382);
      case TONE_RING -> new Point(600, 382);
      case WHEEL_SPEED_SENSOR -> new Point(640, 382);
    };
  }
}
