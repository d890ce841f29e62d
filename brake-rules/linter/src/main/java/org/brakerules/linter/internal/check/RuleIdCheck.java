package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleFile;
import org.brakerules.linter.internal.text.Token.Kind;

/** An id says where its rule stands: folder, then a number in steps of ten, in ascending order. */
final class RuleIdCheck implements Check {

  private static final int STEP = 10;
  private static final Pattern ID = Pattern.compile("(.*)-(\\d{3})");

  @Override
  public void check(RuleBase base, Findings findings) {
    base.ruleFiles().forEach(file -> check(file, findings));
  }

  private static void check(RuleFile file, Findings findings) {
    int last = 0;
    for (AuthoredRule rule : file.rules()) {
      String folder = file.folder().toUpperCase(Locale.ROOT);
      Matcher id = ID.matcher(rule.id());
      if (rule.block().name().filter(name -> name.is(Kind.UNCLOSED)).isPresent()) {
        continue; // told by the check of quotes
      }
      if (!rule.isNamed()) {
        add(
            rule,
            "the rule has no name in quotes",
            "write rule \"" + folder + "-010 Title\"",
            findings);
      } else if (!id.matches() || !id.group(1).equals(folder)) {
        add(
            rule,
            "\"" + rule.id() + "\" is no id of a rule in the folder " + file.folder(),
            "begin the name with " + folder + "- and three digits, then the title",
            findings);
      } else {
        int number = Integer.parseInt(id.group(2));
        checkNumber(file, rule, number, last, findings);
        last = Math.max(last, number);
      }
    }
  }

  private static void checkNumber(
      RuleFile file, AuthoredRule rule, int number, int last, Findings findings) {
    if (number % STEP != 0 || number == 0) {
      add(
          rule,
          rule.id() + " is not in steps of ten",
          "write " + nextFreeId(file, number),
          findings);
    } else if (number < last) {
      add(
          rule,
          rule.id() + " stands after " + id(file, last),
          "put the rules in ascending order; a new rule takes the next free number",
          findings);
    }
  }

  private static String nextFreeId(RuleFile file, int number) {
    List<String> taken = file.rules().stream().map(AuthoredRule::id).toList();
    int next = (number / STEP + 1) * STEP;
    while (taken.contains(id(file, next))) {
      next += STEP;
    }
    return id(file, next);
  }

  private static String id(RuleFile file, int number) {
    return "%s-%03d".formatted(file.folder().toUpperCase(Locale.ROOT), number);
  }

  private static void add(AuthoredRule rule, String message, String remedy, Findings findings) {
    findings.add(LintKind.RULE_ID, rule, rule.block().nameOffset(), message, remedy);
  }
}
