package org.brakerules.random;

/** What a random wheel end is like. */
enum Mood {
  /** Every part looked at, nothing wrong but one thing now and then. */
  SOUND(99, 98, 98),
  /** Worn here and there, looked at here and there. */
  WORN(85, 92, 92),
  /** Anything stated of anything. */
  WILD(34, 60, 60);

  /** How many of a hundred signs are good. */
  final int good;

  /** How many of a hundred states are stated, and usual. */
  final int stated;

  /** How many of a hundred readings are taken, at the right place, in the right way. */
  final int right;

  Mood(int good, int stated, int right) {
    this.good = good;
    this.stated = stated;
    this.right = right;
  }
}
