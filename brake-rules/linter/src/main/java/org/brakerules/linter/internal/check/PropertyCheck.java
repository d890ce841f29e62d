package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.FactType;
import org.brakerules.linter.internal.text.Token;

/** A condition names a property its fact has. */
final class PropertyCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    for (Pattern pattern : rule.patterns()) {
      pattern
          .fact()
          .ifPresent(
              fact ->
                  Reads.properties(pattern)
                      .forEach(property -> check(rule, fact, property, findings)));
    }
  }

  private static void check(AuthoredRule rule, FactType fact, Token property, Findings findings) {
    if (fact.typeOf(property.text()).isEmpty()) {
      findings.add(
          LintKind.UNKNOWN_PROPERTY,
          rule,
          property,
          fact.name() + " has no property \"" + property.text() + "\"",
          Remedy.known(
              property.text(),
              fact.properties().keySet(),
              "see the record " + fact.name() + " for its properties"));
    }
  }
}
