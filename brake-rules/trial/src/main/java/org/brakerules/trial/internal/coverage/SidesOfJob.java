package org.brakerules.trial.internal.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.check.LimitsOfJob;
import org.brakerules.internal.decide.InspectedPart;
import org.brakerules.internal.decide.InspectedParts;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.trial.coverage.Side;

/** How the readings of one job stand to the rows of the limits. */
final class SidesOfJob {

  /**
   * One part that a row is for.
   *
   * @param row the row
   * @param side how the part stands to it; empty if its readings prove nothing, or were taken
   *     another way, or if a maker's figure stands in the place of the row
   */
  record Seen(LimitRow row, Optional<Side> side) {}

  private final BrakeJob job;
  private final Tables tables;
  private final LimitsOfJob limits;

  private SidesOfJob(BrakeJob job, Tables tables) {
    this.job = job;
    this.tables = tables;
    this.limits = new LimitsOfJob(tables.limits(), job.date(), job.ruleSet(), job.makersLimits());
  }

  static List<Seen> of(BrakeJob job, Tables tables) {
    return new SidesOfJob(job, tables).all();
  }

  private List<Seen> all() {
    List<Seen> seen = new ArrayList<>();
    for (InspectedPart part : InspectedParts.of(job, Checks.of(tables, job))) {
      for (Check check : part.checks()) {
        limits.rows(check.limitId(), part.subject()).stream()
            .filter(row -> row.selector().fit(part.subject()) == Fit.YES)
            .forEach(row -> seen.add(new Seen(row, side(row, check, part.subject()))));
      }
    }
    return seen;
  }

  private static Optional<Side> side(LimitRow row, Check check, Subject subject) {
    if (row.limit().written().isEmpty()) {
      return check.limit().map(limit -> side(check)).orElse(Optional.of(Side.NO_FIGURE));
    }
    Optional<LimitInForce> own = row.inForce(subject.layout());
    return own.isPresent() && own.equals(check.limit()) ? side(check) : Optional.empty();
  }

  private static Optional<Side> side(Check check) {
    return switch (check.status()) {
      case MISSING -> Optional.of(Side.NO_READING);
      case WITHIN, BEYOND -> Optional.of(measured(check));
      case NO_LIMIT, WRONG_METHOD, UNPROVEN -> Optional.empty();
    };
  }

  private static Side measured(Check check) {
    if (isZero(check.margin().orElseThrow())) {
      return Side.ON;
    }
    return check.status() == CheckStatus.WITHIN ? Side.INSIDE : Side.BEYOND;
  }

  private static <Q extends Quantity<Q>> boolean isZero(Quantity<Q> margin) {
    Q amount = margin.abs();
    return amount.minus(amount).equals(amount);
  }
}
