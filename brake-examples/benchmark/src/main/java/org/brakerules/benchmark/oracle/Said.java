package org.brakerules.benchmark.oracle;

import org.brakerules.model.decision.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * Something that was said of a part.
 *
 * @param effect what was said
 * @param on of which part
 * @param limits the limits it answers, if the part's own reading is beyond them
 * @param cause the replacement it follows from; null if it follows from what was found
 */
record Said(Effect effect, Facts on, long limits, @Nullable Renewal cause) {

  /** The properties it asks for. */
  long asks() {
    return effect.asks();
  }

  boolean isConsequence() {
    return cause != null;
  }

  /** A part that was found does not go back; a new one that is replaced drags nothing along. */
  boolean isReplacement() {
    return effect.verdict() == Verdict.REPLACE && on.asFound();
  }
}
