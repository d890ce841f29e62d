package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Construct;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.OtherFacts;

/** Conditions are patterns and not, nothing else. */
final class ConstructCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.conditions()
        .ifPresent(
            conditions ->
                conditions.constructs().forEach(construct -> add(rule, construct, findings)));
  }

  private static void add(AuthoredRule rule, Construct construct, Findings findings) {
    findings.add(
        LintKind.FORBIDDEN_CONSTRUCT,
        rule,
        construct.offset(),
        construct.name() + " does not belong to the rule language",
        remedy(construct.name()));
  }

  private static String remedy(String name) {
    return switch (name) {
      case "or" ->
          "write one rule for each pattern; signs of one part may be joined by || in its brackets";
      case "and" -> "write the patterns below one another without brackets";
      case "exists" -> "leave the word exists out";
      case "not over several patterns" -> "write not before each pattern, without brackets";
      case "a value without a property" -> "write property == value, joined by commas";
      case ":=" -> "write $name : property";
      default ->
          "say it with patterns of parts, "
              + OtherFacts.inWords("or")
              + "; what must be counted or calculated is calculated before the rules run";
    };
  }
}
