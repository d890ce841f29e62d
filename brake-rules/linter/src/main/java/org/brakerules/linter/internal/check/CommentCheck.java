package org.brakerules.linter.internal.check;

import java.util.regex.Pattern;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleFile;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/** A comment can hide a condition or a whole rule from everyone who reads in a hurry. */
final class CommentCheck implements Check {

  private static final Pattern RULE = Pattern.compile("(?m)^[/*\\s]*rule\\s+[\"']");

  @Override
  public void check(RuleBase base, Findings findings) {
    base.rules().forEach(rule -> inside(rule, findings));
    base.ruleFiles().forEach(file -> between(file, findings));
  }

  private static void inside(AuthoredRule rule, Findings findings) {
    for (Token token : rule.block().tokens()) {
      if (token.is(Kind.COMMENT)) {
        findings.add(
            LintKind.COMMENT,
            rule,
            token,
            "a comment stands inside the rule",
            "take it out; reasons belong into @because or into " + rule.folder() + ".md");
      }
    }
  }

  private static void between(RuleFile file, Findings findings) {
    for (Token token : file.outside()) {
      if (token.is(Kind.COMMENT) && RULE.matcher(token.text()).find()) {
        findings.add(
            LintKind.COMMENT,
            file.source().spot(token.offset()),
            "a rule is commented out",
            "take it out; its id is not used again");
      }
    }
  }
}
