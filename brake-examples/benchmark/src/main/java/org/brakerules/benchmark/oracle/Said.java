package org.brakerules.benchmark.oracle;

import org.brakerules.model.decision.Verdict;

/**
 * Something that was said of a part.
 *
 * @param effect what was said
 * @param on of which part
 * @param limits the limits it answers, if the part's own reading is beyond them
 * @param cause the replacement it follows from, see {@link Replacements}; {@link #FIRST_HAND} if it
 *     follows from what was found
 */
record Said(Effect effect, Facts on, long limits, int cause) {

  static final int FIRST_HAND = -1;

  /** The properties it asks for. */
  long asks() {
    return effect.asks();
  }

  boolean isConsequence() {
    return cause != FIRST_HAND;
  }

  /** A part that was found does not go back; a new one that is replaced drags nothing along. */
  boolean isReplacement() {
    return effect.verdict() == Verdict.REPLACE && on.asFound();
  }
}
