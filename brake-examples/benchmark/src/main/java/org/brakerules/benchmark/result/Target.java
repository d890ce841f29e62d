package org.brakerules.benchmark.result;

import java.util.OptionalDouble;

/**
 * What a figure should come to.
 *
 * @param atMost whether less is better
 * @param reach the value to reach
 * @param stretch a value beyond that; empty if there is none
 */
public record Target(boolean atMost, double reach, OptionalDouble stretch) {

  /** How far a figure came. */
  public enum Outcome {
    /** The value to reach was not reached. */
    NOT_REACHED("not reached"),
    /** The value to reach lies within the error. */
    UNCERTAIN("too close to tell"),
    /** The value to reach was reached. */
    REACHED("reached"),
    /** The value beyond it was reached as well. */
    STRETCH("stretch reached");

    private final String words;

    Outcome(String words) {
      this.words = words;
    }

    /** As the page says it. */
    public String words() {
      return words;
    }
  }

  /** Less is better. */
  public static Target atMost(double reach, double stretch) {
    return new Target(true, reach, OptionalDouble.of(stretch));
  }

  /** Less is better, and there is nothing beyond. */
  public static Target atMost(double reach) {
    return new Target(true, reach, OptionalDouble.empty());
  }

  /** More is better. */
  public static Target atLeast(double reach, double stretch) {
    return new Target(false, reach, OptionalDouble.of(stretch));
  }

  /** How far a figure came; what is reached must be reached by all that its error leaves open. */
  public Outcome outcome(Measured measured) {
    double best = measured.value() + (atMost ? -measured.error() : measured.error());
    double worst = measured.value() + (atMost ? measured.error() : -measured.error());
    if (stretch.isPresent() && meets(worst, stretch.getAsDouble())) {
      return Outcome.STRETCH;
    }
    if (meets(worst, reach)) {
      return Outcome.REACHED;
    }
    return meets(best, reach) ? Outcome.UNCERTAIN : Outcome.NOT_REACHED;
  }

  private boolean meets(double value, double wanted) {
    return atMost ? value <= wanted : value >= wanted;
  }
}
