package org.brakerules.harness.sheet;

import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.part.LipDirection;
import org.brakerules.model.part.SealKind;
import org.brakerules.model.reading.Station;

/** Which way the open side of a camshaft seal has to face. A test holds it against the rules. */
enum LipToFace {
  TOWARD_ADJUSTER("open side toward the adjuster"),
  AS_ITS_MAKER_SHOWS("open side as its maker shows"),
  NO_DIRECTION("an O-ring has no direction"),
  LAYOUT_UNKNOWN("state the camshaft layout first");

  private final String inWords;

  LipToFace(String inWords) {
    this.inWords = inWords;
  }

  static LipToFace of(CamshaftLayout layout, Station station, SealKind kind) {
    if (kind == SealKind.O_RING) {
      return NO_DIRECTION;
    }
    return switch (layout) {
      case TUBE -> TOWARD_ADJUSTER;
      case SPLIT -> station == Station.HEAD_END ? TOWARD_ADJUSTER : AS_ITS_MAKER_SHOWS;
      case CLOSED -> AS_ITS_MAKER_SHOWS;
      case UNKNOWN -> LAYOUT_UNKNOWN;
    };
  }

  /** Whether a lip that faces this way is wrong for certain. */
  boolean forbids(LipDirection lip) {
    return this == TOWARD_ADJUSTER && lip == LipDirection.TOWARD_HEAD;
  }

  String inWords() {
    return inWords;
  }
}
