package org.brakerules.linter.internal.check;

import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleFile;
import org.brakerules.linter.internal.language.Header;
import org.brakerules.linter.internal.language.OtherFacts;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/** After the header a rule file holds rules and nothing else. */
final class OutsideRulesCheck implements Check {

  private static final Set<String> OF_FACTS = Set.of("query", "declare");
  private static final Set<String> OF_JAVA = Set.of("function", "import", "unit", "dialect");
  private static final String GLOBAL = "global";

  @Override
  public void check(RuleBase base, Findings findings) {
    base.ruleFiles().forEach(file -> check(file, findings));
  }

  /** Tells each element, and of what is no known element only the first word. */
  private static void check(RuleFile file, Findings findings) {
    int headerEnd = file.source().lineStart(Header.LINES.size());
    long toldBefore = -1;
    for (Token token : file.outside()) {
      if (token.offset() < headerEnd || token.is(Kind.COMMENT)) {
        continue;
      }
      long rulesBefore =
          file.rules().stream().filter(rule -> rule.block().start() < token.offset()).count();
      boolean element = file.source().startsLine(token.offset()) && isElement(token.text());
      if (element || rulesBefore != toldBefore) {
        toldBefore = rulesBefore;
        findings.add(
            LintKind.OUTSIDE_RULES,
            file.source().spot(token.offset()),
            "\"" + token.text() + "\" stands where only a rule may stand",
            remedy(token.text()));
      }
    }
  }

  private static boolean isElement(String word) {
    return OF_FACTS.contains(word) || OF_JAVA.contains(word) || word.equals(GLOBAL);
  }

  private static String remedy(String word) {
    if (word.equals(GLOBAL)) {
      return "take it out; rules speak through verdict, the only global";
    } else if (OF_FACTS.contains(word)) {
      return "take it out; rules speak of parts, " + OtherFacts.inWords("and") + " only";
    } else if (OF_JAVA.contains(word)) {
      return "take it out; what needs Java is calculated before the rules run";
    }
    return "take it out, or begin a rule on a line of its own: rule \"COMPONENT-010 Title\"";
  }
}
