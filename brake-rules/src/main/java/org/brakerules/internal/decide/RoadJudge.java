package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.engine.RuleText;
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
      Set.of(Verdict.REPLACE, Verdict.HOLD, Verdict.ADJUST, Verdict.CLEAN);

  private final Tables tables;
  private final Checks checks;
  private final List<RuleText> laws;
  private final RuleSet ruleSet;

  RoadJudge(Tables tables, List<RuleText> rules, RuleSet ruleSet, Checks checks) {
    this.tables = tables;
    this.checks = checks;
    this.ruleSet = ruleSet;
    this.laws = rules.stream().filter(rule -> rule.laws().contains(ruleSet)).toList();
  }

  RoadAnswer answer(InspectedPart part, List<Reason> reasons) {
    if (reasons.stream().anyMatch(this::failsByLaw)) {
      return RoadAnswer.FAILED;
    }
    List<RoadAnswer> answers = new ArrayList<>();
    for (Check check : part.checks()) {
      if (check.limit().filter(limit -> isLaw(limit.source())).isPresent()) {
        answers.add(byLimit(check.status()));
      } else if (isUnstatedLaw(part, check)) {
        answers.add(RoadAnswer.OPEN);
      }
    }
    for (RuleText law : laws) {
      if (law.isFor(part.subject().axleKind())) {
        answers.addAll(bySigns(part, law.conditionsOn(part.part().getClass())));
      }
    }
    RoadAnswer answer = gravest(answers);
    return answer == RoadAnswer.MET && isUnfit(reasons) ? RoadAnswer.OPEN : answer;
  }

  /**
   * Laws also forbid what is broken or worn out in general words that no clause here cites, and a
   * reading that is to be taken again meets no law.
   */
  private static boolean isUnfit(List<Reason> reasons) {
    return reasons.stream().map(Reason::verdict).anyMatch(UNFIT::contains);
  }

  /** Whether a law limits the part, and which of its limits holds hangs on what is not stated. */
  private boolean isUnstatedLaw(InspectedPart part, Check check) {
    return check.status() == CheckStatus.NO_LIMIT
        && tables.limits().rows(check.limitId()).stream()
            .anyMatch(row -> row.law().filter(ruleSet::equals).isPresent())
        && !checks.unstated(check.limitId(), part.subject()).isEmpty();
  }

  private boolean failsByLaw(Reason reason) {
    return FAILING.contains(reason.verdict()) && reason.source().stream().anyMatch(this::isLaw);
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

  private static List<RoadAnswer> bySigns(InspectedPart part, List<String> names) {
    List<RoadAnswer> answers = new ArrayList<>();
    for (String name : names) {
      Property.of(part.part().partKind(), name)
          .filter(Property::isSign)
          .map(sign -> part.shows(sign, Sign.NOT_CHECKED) ? RoadAnswer.OPEN : RoadAnswer.MET)
          .ifPresent(answers::add);
    }
    return answers;
  }

  private static RoadAnswer gravest(List<RoadAnswer> answers) {
    return answers.stream().max(Enum::compareTo).orElse(RoadAnswer.SILENT);
  }
}
