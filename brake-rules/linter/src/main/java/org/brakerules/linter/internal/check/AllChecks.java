package org.brakerules.linter.internal.check;

import java.util.List;
import org.brakerules.linter.LintProblem;
import org.brakerules.linter.internal.base.RuleBase;

/** The one list of checks; a new check is added here. */
public final class AllChecks {

  private static final List<Check> CHECKS =
      List.of(
          new StrayFileCheck(),
          new HeaderCheck(),
          new OutsideRulesCheck(),
          new SyntaxCheck(),
          new QuoteCheck(),
          new CurlyQuoteCheck(),
          new CommentCheck(),
          new RuleIdCheck(),
          new RepeatedRuleIdCheck(),
          new RuleTitleCheck(),
          new AttributeCheck(),
          new MetadataKeyCheck(),
          new MetadataFormCheck(),
          new SourceCheck(),
          new SentenceCheck(),
          new SentenceNameCheck(),
          new EmptyConditionsCheck(),
          new ConstructCheck(),
          new FactTypeCheck(),
          new PropertyCheck(),
          new ConstantCheck(),
          new VariableCheck(),
          new LimitCheck(),
          new WheelEndCheck(),
          new NegatedFactCheck(),
          new NegatedSignCheck(),
          new NegationCheck(),
          new NumberCheck(),
          new SizeCheck(),
          new ValueCheck(),
          new ConditionFormCheck(),
          new SubjectCheck(),
          new ActionCheck(),
          new PointCheck(),
          new TableFormCheck(),
          new TableSourceCheck(),
          new RuleSetFolderCheck(),
          new ComparisonRowCheck(),
          new LimitIdCheck(),
          new PointIdCheck(),
          new LimitPointCheck(),
          new MissingCellCheck(),
          new TableWordCheck(),
          new TablePropertyCheck(),
          new TableValueCheck(),
          new TableDateCheck(),
          new SelectorCheck(),
          new FindsCheck(),
          new LimitOverlapCheck(),
          new LimitGapCheck(),
          new LimitFitCheck(),
          new ListedIdCheck(),
          new CaseFormCheck(),
          new CaseKeyCheck(),
          new CaseNameCheck(),
          new CaseRuleCheck(),
          new CasePartCheck(),
          new CaseAnswerCheck(),
          new SoundWheelEndCheck(),
          new CaseJobCheck(),
          new UnreadPointCheck(),
          new UnreadPartCheck(),
          new UnreadSignCheck(),
          new UnreadListCheck(),
          new UnaskedPropertyCheck(),
          new SameRuleCheck(),
          new ConflictCheck(),
          new ContradictionCheck(),
          new NeverReplacedCheck(),
          new StationCheck(),
          new LimitPartCheck());

  private AllChecks() {}

  /** Everything wrong with a rule base, in the order of files and lines. */
  public static List<LintProblem> run(RuleBase base) {
    Findings findings = new Findings();
    CHECKS.forEach(check -> check.check(base, findings));
    return findings.sorted();
  }
}
