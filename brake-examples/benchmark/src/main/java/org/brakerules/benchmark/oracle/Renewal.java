package org.brakerules.benchmark.oracle;

import java.util.ArrayList;
import java.util.List;

/** What is known of the replacement of one kind of part at one wheel end. */
final class Renewal {

  private boolean due;
  private int firstHand;
  private final List<Said> following = new ArrayList<>(4);

  /** Some part of the kind does not go back; whether that is new. */
  boolean becomesDue() {
    boolean isNew = !due;
    due = true;
    return isNew;
  }

  /** One more part of the kind does not go back for what was found. */
  void addFirstHand() {
    firstHand++;
  }

  /** How many parts of the kind do not go back for what was found. */
  int firstHand() {
    return firstHand;
  }

  /** Something follows from it. */
  void follow(Said said) {
    following.add(said);
  }

  List<Said> following() {
    return following;
  }
}
