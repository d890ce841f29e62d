package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Metadata;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token;

/** Every source a rule cites is in the table of sources. */
final class SourceCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.metadata("source").stream()
        .map(Metadata::text)
        .forEach(text -> text.ifPresent(cited -> check(rule, cited, base, findings)));
  }

  private static void check(AuthoredRule rule, Token cited, RuleBase base, Findings findings) {
    for (Citation citation : Citation.all(cited.value())) {
      if (!citation.isKnown(base)) {
        findings.add(
            LintKind.UNKNOWN_SOURCE,
            rule,
            cited.valueOffset() + citation.start(),
            citation.fault(),
            citation.remedy(base));
      }
    }
  }
}
