package org.brakerules.benchmark.oracle;

import java.util.ArrayList;
import java.util.List;

/** All that was said of one part, and what of it was answered. */
final class Findings {

  private final List<Said> said = new ArrayList<>(4);
  private long answered;
  private boolean replacedFirstHand;
  private boolean replaced;

  void say(Said one) {
    said.add(one);
    if (one.isReplacement()) {
      replaced = true;
      replacedFirstHand |= !one.isConsequence();
    }
  }

  /** These signs of the part were spoken of. */
  void answer(long signs) {
    answered |= signs;
  }

  List<Said> said() {
    return said;
  }

  long answered() {
    return answered;
  }

  /** Whether the part was found and does not go back. */
  boolean isReplaced() {
    return replaced;
  }

  /** Whether it does not go back for what was found. */
  boolean isReplacedFirstHand() {
    return replacedFirstHand;
  }
}
