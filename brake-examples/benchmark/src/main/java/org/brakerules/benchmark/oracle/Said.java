package org.brakerules.benchmark.oracle;

import org.brakerules.model.decision.Verdict;

/**
 * Something that was said of a part.
 *
 * @param effect what was said
 * @param on of which part
 * @param asks the properties it asks for
 * @param limits the limits it answers, if the part's own reading is beyond them
 * @param cause the replacement it follows from, see {@link Replacements}; {@link #FIRST_HAND} if it
 *     follows from what was found
 */
record Said(Effect effect, Facts on, long asks, long limits, int cause) {

  static final int FIRST_HAND = -1;

  static Said of(Effect effect, Facts on, long limits, int cause) {
    long asks = effect.property().isEmpty() ? 0 : Knowable.of(on.kind()).set(effect.property());
    return new Said(effect, on, asks, limits, cause);
  }

  boolean isConsequence() {
    return cause != FIRST_HAND;
  }

  /** A part that was found does not go back; a new one that is replaced drags nothing along. */
  boolean isReplacement() {
    return effect.verdict() == Verdict.REPLACE && on.asFound();
  }
}
