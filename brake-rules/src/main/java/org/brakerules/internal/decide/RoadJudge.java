package org.brakerules.internal.decide;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.engine.Laws;
import org.brakerules.internal.engine.Laws.Law;
import org.brakerules.internal.table.Property;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.Sign;

/** The second answer: what the law of the job's rule set says of a part. */
final class RoadJudge {

  private static final Set<Verdict> UNFIT =
      EnumSet.of(Verdict.REPLACE, Verdict.HOLD, Verdict.MEASURE_AGAIN);
  private static final Set<Verdict> FAILING =
      EnumSet.of(Verdict.REPLACE, Verdict.HOLD, Verdict.ADJUST, Verdict.CLEAN);

  private final Tables tables;
  private final Checks checks;
  private final Laws laws;
  private final RuleSet ruleSet;

  RoadJudge(Tables tables, Laws laws, RuleSet ruleSet, Checks checks) {
    this.tables = tables;
    this.checks = checks;
    this.ruleSet = ruleSet;
    this.laws = laws;
  }

  RoadAnswer answer(InspectedPart part, List<Reason> reasons) {
    for (Reason reason : reasons) {
      if (failsByLaw(reason)) {
        return RoadAnswer.FAILED;
      }
    }
    RoadAnswer answer = graver(byLimits(part), bySigns(part));
    return answer == RoadAnswer.MET && isUnfit(reasons) ? RoadAnswer.OPEN : answer;
  }

  /**
   * Laws also forbid what is broken or worn out in general words that no clause here cites, and a
   * reading that is to be taken again meets no law.
   */
  private static boolean isUnfit(List<Reason> reasons) {
    return reasons.stream().map(Reason::verdict).anyMatch(UNFIT::contains);
  }

  private RoadAnswer byLimits(InspectedPart part) {
    RoadAnswer gravest = RoadAnswer.SILENT;
    for (Check check : part.checks()) {
      if (check.limit().isPresent() && isLaw(check.limit().get().source())) {
        gravest = graver(gravest, byLimit(check.status()));
      } else if (isUnstatedLaw(part, check)) {
        gravest = graver(gravest, RoadAnswer.OPEN);
      }
    }
    return gravest;
  }

  /** Whether a law limits the part, and which of its limits holds hangs on what is not stated. */
  private boolean isUnstatedLaw(InspectedPart part, Check check) {
    return check.status() == CheckStatus.NO_LIMIT
        && tables.limits().isLawOf(check.limitId(), ruleSet)
        && checks.isUnstated(check.limitId(), part.subject());
  }

  private boolean failsByLaw(Reason reason) {
    if (FAILING.contains(reason.verdict())) {
      for (Source source : reason.source()) {
        if (isLaw(source)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean isLaw(Source source) {
    return tables.sources().isLawOf(source, ruleSet);
  }

  private static RoadAnswer byLimit(CheckStatus status) {
    return switch (status) {
      case WITHIN -> RoadAnswer.MET;
      case BEYOND -> RoadAnswer.FAILED;
      case UNPROVEN, MISSING, WRONG_METHOD, NO_LIMIT -> RoadAnswer.OPEN;
    };
  }

  private RoadAnswer bySigns(InspectedPart part) {
    RoadAnswer gravest = RoadAnswer.SILENT;
    for (Law law : laws.of(ruleSet, part.part().partKind())) {
      if (law.rule().isFor(part.subject().axleKind())) {
        for (Property sign : law.signs()) {
          boolean open = part.shows(sign, Sign.NOT_CHECKED);
          gravest = graver(gravest, open ? RoadAnswer.OPEN : RoadAnswer.MET);
        }
      }
    }
    return gravest;
  }

  private static RoadAnswer graver(RoadAnswer one, RoadAnswer other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
