package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.OtherFacts;
import org.brakerules.linter.internal.language.Vocabulary;

/** A pattern speaks of a part or of one of the other facts, by its plain name. */
final class FactTypeCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.patterns().stream()
        .filter(pattern -> pattern.fact().isEmpty())
        .forEach(pattern -> check(rule, pattern, findings));
  }

  private static void check(AuthoredRule rule, Pattern pattern, Findings findings) {
    String plain = pattern.type().substring(pattern.type().lastIndexOf('.') + 1);
    boolean qualified = pattern.type().contains(".");
    findings.add(
        qualified ? LintKind.QUALIFIED_TYPE : LintKind.UNKNOWN_TYPE,
        rule,
        pattern.typeOffset(),
        qualified
            ? pattern.type() + " is written with its package"
            : "\"" + pattern.type() + "\" is no fact of the job",
        Remedy.known(
            plain,
            Vocabulary.factNames(),
            "name a part, such as CamshaftBushing, or " + OtherFacts.inWords("or")));
  }
}
