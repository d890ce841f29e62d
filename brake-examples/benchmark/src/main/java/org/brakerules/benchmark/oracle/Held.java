package org.brakerules.benchmark.oracle;

import java.util.Optional;
import org.brakerules.model.decision.CheckStatus;

/**
 * A check as the oracle works with it.
 *
 * @param hangs whether another figure might hold, if something unstated were stated
 */
record Held(Limit limit, OracleCheck check, boolean hangs) {

  static Held withoutFigure(Limit limit, boolean hangs) {
    return new Held(
        limit,
        new OracleCheck(
            limit.id(),
            CheckStatus.NO_LIMIT,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        hangs);
  }

  boolean isBeyond() {
    return check.status() == CheckStatus.BEYOND;
  }

  /** The readings prove on which side of the figure they are. */
  boolean isSettled() {
    return check.status() == CheckStatus.WITHIN || isBeyond();
  }

  boolean hasFigure() {
    return check.figure().isPresent();
  }
}
