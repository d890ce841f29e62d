package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.table.Property;
import org.brakerules.internal.table.SourceTable;
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

  private static final Set<Verdict> FAILING =
      Set.of(Verdict.REPLACE, Verdict.HOLD, Verdict.ADJUST, Verdict.CLEAN);

  private final SourceTable sources;
  private final List<RuleText> laws;
  private final RuleSet ruleSet;

  RoadJudge(SourceTable sources, List<RuleText> rules, RuleSet ruleSet) {
    this.sources = sources;
    this.ruleSet = ruleSet;
    this.laws =
        rules.stream().filter(rule -> rule.sources().stream().anyMatch(this::isLaw)).toList();
  }

  RoadAnswer answer(InspectedPart part, List<Reason> reasons) {
    if (reasons.stream().anyMatch(this::failsByLaw)) {
      return RoadAnswer.FAILED;
    }
    List<RoadAnswer> answers = new ArrayList<>();
    for (Check check : part.checks()) {
      if (check.limit().filter(limit -> isLaw(limit.source())).isPresent()) {
        answers.add(byLimit(check.status()));
      }
    }
    laws.forEach(law -> answers.addAll(bySigns(part, law)));
    RoadAnswer answer = gravest(answers);
    return answer == RoadAnswer.MET && isUnfit(reasons) ? RoadAnswer.OPEN : answer;
  }

  /** Laws also forbid what is broken or worn out in general words that no clause here cites. */
  private static boolean isUnfit(List<Reason> reasons) {
    return reasons.stream()
        .anyMatch(one -> one.verdict() == Verdict.REPLACE || one.verdict() == Verdict.HOLD);
  }

  private boolean failsByLaw(Reason reason) {
    return FAILING.contains(reason.verdict()) && reason.source().stream().anyMatch(this::isLaw);
  }

  private boolean isLaw(Source source) {
    return sources.isLawOf(source, ruleSet);
  }

  private static RoadAnswer byLimit(CheckStatus status) {
    return switch (status) {
      case WITHIN -> RoadAnswer.MET;
      case BEYOND -> RoadAnswer.FAILED;
      case UNPROVEN, MISSING, WRONG_METHOD, NO_LIMIT -> RoadAnswer.OPEN;
    };
  }

  private static List<RoadAnswer> bySigns(InspectedPart part, RuleText rule) {
    return rule.conditionsOn(part.part().getClass()).stream()
        .flatMap(name -> Property.of(part.part().partKind(), name).stream())
        .filter(Property::isSign)
        .map(sign -> part.shows(sign, Sign.NOT_CHECKED) ? RoadAnswer.OPEN : RoadAnswer.MET)
        .toList();
  }

  private static RoadAnswer gravest(List<RoadAnswer> answers) {
    return answers.stream().max(Enum::compareTo).orElse(RoadAnswer.SILENT);
  }
}
