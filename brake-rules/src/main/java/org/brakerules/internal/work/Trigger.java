package org.brakerules.internal.work;

import java.util.Optional;
import org.brakerules.model.part.Scope;

/**
 * Something other than a decision on a part that puts a step into a plan.
 *
 * @param kind what it is
 * @param scope the scope from which on the step is due; only of {@link Kind#FROM_SCOPE}
 * @param step the step it goes with; empty unless {@link Kind#WITH_STEP}
 */
record Trigger(Kind kind, Optional<Scope> scope, String step) {

  /** The kinds of trigger. */
  enum Kind {
    /** The work goes at least as far as a scope. */
    FROM_SCOPE,
    /** Another step is in the plan. */
    WITH_STEP,
    /** The figures say which shims to change. */
    SHIMS,
    /** A part of the wheel end is on hold. */
    HOLD,
    /** The work goes further than the inspection did. */
    FURTHER,
    /** A part must be decided before it is fitted. */
    UNDECIDED,
    /** A part can only be decided by readings taken after the work. */
    UNDECIDED_UNTIL_PROOF
  }

  static Trigger of(Kind kind) {
    return new Trigger(kind, Optional.empty(), "");
  }

  boolean is(Kind other) {
    return kind == other;
  }
}
