package org.brakerules.calc.play;

/** One of the four lines across a bore along which play is read, 45 degrees apart. */
public enum PlayDirection {
  /** Straight up and down. */
  UP_AND_DOWN("up and down"),
  /** Between up in front and down behind. */
  UP_IN_FRONT("up in front, down behind"),
  /** Straight to the front and to the rear. */
  FRONT_TO_REAR("front to rear"),
  /** Between down in front and up behind. */
  DOWN_IN_FRONT("down in front, up behind");

  private final String inWords;

  PlayDirection(String inWords) {
    this.inWords = inWords;
  }

  /** The direction in a sentence. */
  public String inWords() {
    return inWords;
  }
}
