package org.brakerules.linter.internal.check;

import java.util.HashSet;
import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleFile;
import org.brakerules.linter.internal.text.Token.Kind;

/** An id says where its rule stands: folder, then a number in steps of ten, in ascending order. */
final class RuleIdCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    base.ruleFiles().forEach(file -> check(file, findings));
  }

  private static void check(RuleFile file, Findings findings) {
    RuleIds ids = new RuleIds(file);
    Set<String> earlier = new HashSet<>();
    int last = 0;
    for (AuthoredRule rule : file.rules()) {
      if (rule.block().name().filter(name -> name.is(Kind.UNCLOSED)).isPresent()) {
        continue; // told by the check of quotes
      }
      if (!rule.isNamed()) {
        add(
            rule,
            "the rule has no name in quotes",
            ids.toWriteFor(last, last, "rule \"%s Title\""),
            findings);
      } else if (ids.number(rule).isEmpty()) {
        add(
            rule,
            "\"" + rule.id() + "\" is no id of a rule in the folder " + file.folder(),
            "begin the name with " + ids.folder() + "- and three digits, then the title",
            findings);
      } else if (earlier.add(rule.id())) { // or else told as a repeated id
        int number = ids.number(rule).getAsInt();
        checkNumber(rule, number, last, ids, findings);
        last = Math.max(last, number);
      }
    }
  }

  private static void checkNumber(
      AuthoredRule rule, int number, int last, RuleIds ids, Findings findings) {
    if (number % RuleIds.STEP != 0 || number == 0) {
      add(
          rule,
          rule.id() + " is not in steps of ten",
          ids.toWriteFor(number, last, "%s")
              + "; if the rule stands in decision-tables.csv or in cases, its id changes there too",
          findings);
    } else if (number < last) {
      add(
          rule,
          rule.id() + " stands after " + ids.id(last),
          "put the rule back to its place if it was only moved; a new rule takes the next free id, "
              + ids.next()
              + ", at the end of the file",
          findings);
    }
  }

  private static void add(AuthoredRule rule, String message, String remedy, Findings findings) {
    findings.add(LintKind.RULE_ID, rule, rule.block().nameOffset(), message, remedy);
  }
}
