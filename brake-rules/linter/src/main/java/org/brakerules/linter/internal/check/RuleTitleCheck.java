package org.brakerules.linter.internal.check;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;

/** A title is short, plain and in sentence case, so that lists of rules can be read. */
final class RuleTitleCheck implements RuleCheck {

  private static final int MOST_WORDS = 10;
  private static final Pattern CAPITAL_INSIDE = Pattern.compile("\\s(\\p{Lu}\\p{Ll}+)");
  private static final Pattern DIGITS = Pattern.compile("\\d+");

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    if (!rule.isNamed()) {
      return;
    }
    int afterId = rule.name().indexOf(' ');
    String title = afterId < 0 ? "" : rule.name().substring(afterId + 1);
    if (title.isBlank()) {
      add(rule, "the rule has no title", "write the finding in a few words after the id", findings);
      return;
    }
    checkCase(rule, title, findings);
    checkLength(rule, title, findings);
  }

  private static void checkCase(AuthoredRule rule, String title, Findings findings) {
    Matcher capital = CAPITAL_INSIDE.matcher(title);
    if (!Character.isUpperCase(title.charAt(0))) {
      add(
          rule,
          "the title \"" + title + "\" does not begin with one blank and a capital letter",
          "begin it like a sentence",
          findings);
    } else if (capital.find()) {
      add(
          rule,
          "\"" + capital.group(1) + "\" has a capital letter inside the title",
          "write the title in sentence case: only its first word has a capital letter",
          findings);
    }
  }

  private static void checkLength(AuthoredRule rule, String title, Findings findings) {
    int words = title.strip().split("\\s+").length;
    if (words > MOST_WORDS) {
      add(
          rule,
          "the title has " + words + " words",
          "say it in at most " + MOST_WORDS + "; details belong into @because",
          findings);
    }
    if (title.endsWith(".")) {
      add(rule, "the title ends with a full stop", "leave the full stop out", findings);
    }
    Optional.of(DIGITS.matcher(title))
        .filter(Matcher::find)
        .ifPresent(
            digits ->
                add(
                    rule,
                    "the number " + digits.group() + " stands in the title",
                    "leave it out; numbers stand in the tables of limits",
                    findings));
  }

  private static void add(AuthoredRule rule, String message, String remedy, Findings findings) {
    findings.add(LintKind.RULE_TITLE, rule, rule.block().nameOffset(), message, remedy);
  }
}
