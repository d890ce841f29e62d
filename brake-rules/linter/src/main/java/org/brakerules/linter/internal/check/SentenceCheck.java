package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Metadata;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token;

/** Findings and actions are full sentences without numbers: numbers come from the job. */
final class SentenceCheck implements RuleCheck {

  private static final Pattern DIGITS = Pattern.compile("\\d[\\d.,/]*");

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    for (String key : List.of("because", "action")) {
      rule.metadata(key).stream()
          .map(Metadata::text)
          .forEach(text -> text.ifPresent(sentence -> check(rule, key, sentence, findings)));
    }
  }

  private static void check(AuthoredRule rule, String key, Token sentence, Findings findings) {
    if (!sentence.value().endsWith(".")) {
      findings.add(
          LintKind.SENTENCE,
          rule,
          sentence,
          "@" + key + " does not end with a full stop",
          "write full sentences");
    }
    Matcher digits = DIGITS.matcher(sentence.value());
    if (digits.find()) {
      findings.add(
          LintKind.NUMBER,
          rule,
          sentence.valueOffset() + digits.start(),
          "the number " + digits.group() + " stands in @" + key,
          "write {limit} or {measured} where the rule speaks of a limit, or leave the number out");
    }
  }
}
