package org.brakerules.harness.sheet;

import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;

/**
 * How a part is marked in the picture: by shape and filling, so that it is told apart without
 * colour.
 */
enum Mark {
  HOLD("stop: on hold", "a black diamond"),
  REPLACE("new part", "a black disc"),
  EXCHANGE("relined or exchanged", "a black square"),
  UNDECIDED("decide first", "a white diamond"),
  ADJUST("adjust", "a white square"),
  COMES_OUT("comes out", "a dashed ring"),
  CLEAN("clean, goes back", "a ring in a dotted ring"),
  IN_PLACE("new already", "two rings, one in the other"),
  REUSE("goes back", "a white ring");

  private final String inWords;
  private final String shape;

  Mark(String inWords, String shape) {
    this.inWords = inWords;
    this.shape = shape;
  }

  static Mark of(Decision decision) {
    return decision.hold() ? HOLD : of(decision.disposition());
  }

  private static Mark of(Disposition disposition) {
    return switch (disposition) {
      case REUSE -> REUSE;
      case CLEAN -> CLEAN;
      case ADJUST -> ADJUST;
      case UNDECIDED -> UNDECIDED;
      case REPLACE -> REPLACE;
    };
  }

  /** What becomes of the part, such as {@code goes back}. */
  String inWords() {
    return inWords;
  }

  /** The shape in words. */
  String shape() {
    return shape;
  }

  private boolean isBlack() {
    return this == HOLD || this == REPLACE || this == EXCHANGE;
  }

  /** Draws the mark with a number in it. */
  void draw(Picture picture, double x, double y, int number) {
    String fill = isBlack() ? "black" : "white";
    switch (this) {
      case HOLD, UNDECIDED ->
          picture.path("M %s %s l 14 14 l -14 14 l -14 -14 Z".formatted(x, y - 14), fill, 1.5);
      case ADJUST, EXCHANGE -> picture.box(x - 11, y - 11, 22, 22, fill);
      case CLEAN -> {
        picture.circle(x, y, 10.8, fill);
        picture.dotted(x, y, 13.2);
      }
      case IN_PLACE -> {
        picture.circle(x, y, 13.2, fill);
        picture.circle(x, y, 10.2, fill);
      }
      case COMES_OUT -> picture.dashedCircle(x, y, 11.5, fill);
      case REPLACE, REUSE -> picture.circle(x, y, 11.5, fill);
    }
    picture.number(x, y + 5.3, number, isBlack() ? "white" : "black");
  }
}
