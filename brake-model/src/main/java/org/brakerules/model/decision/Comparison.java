package org.brakerules.model.decision;

import org.brakerules.model.quantity.Quantity;

/** The side of a limit on which a reading passes. */
public enum Comparison {
  /** Passes at the value and below. */
  AT_MOST("at most"),
  /** Passes below the value only. */
  LESS_THAN("less than"),
  /** Passes at the value and above. */
  AT_LEAST("at least"),
  /** Passes above the value only. */
  MORE_THAN("more than");

  private final String inWords;

  Comparison(String inWords) {
    this.inWords = inWords;
  }

  /** The comparison in a sentence and in limit tables, such as {@code at most}. */
  public String inWords() {
    return inWords;
  }

  /** Whether a larger reading is a worse one. */
  public boolean isUpper() {
    return this == AT_MOST || this == LESS_THAN;
  }

  /** Whether a value passes against a limit. */
  public <Q extends Quantity<Q>> boolean passes(Q value, Q limit) {
    int order = value.compareTo(limit);
    return switch (this) {
      case AT_MOST -> order <= 0;
      case LESS_THAN -> order < 0;
      case AT_LEAST -> order >= 0;
      case MORE_THAN -> order > 0;
    };
  }
}
