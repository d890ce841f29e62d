package org.brakerules.benchmark.oracle;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.reading.Reading;

/**
 * A check as the oracle works with it.
 *
 * @param hangs whether another figure might hold, if something unstated were stated
 */
record Held(Limit limit, OracleCheck check, boolean hangs) {

  /** What was measured is told though nothing is known to hold it against: the first reading. */
  static Held withoutFigure(Limit limit, Facts part, boolean hangs) {
    List<? extends Reading<?>> readings = part.measurement(limit.property()).readings();
    return new Held(
        limit,
        new OracleCheck(
            limit.id(),
            CheckStatus.NO_LIMIT,
            Optional.empty(),
            Optional.empty(),
            readings.isEmpty() ? Optional.empty() : Optional.of(readings.get(0)),
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
