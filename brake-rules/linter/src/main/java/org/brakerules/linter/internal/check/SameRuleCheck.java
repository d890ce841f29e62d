package org.brakerules.linter.internal.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.VerdictWord;
import org.brakerules.linter.internal.text.Spot;
import org.brakerules.linter.internal.text.Token;

/** No two rules say the same of the same parts. */
final class SameRuleCheck implements Check {

  /** What a rule says: its conditions, its verdict and the point it asks for. */
  private record Saying(List<String> conditions, VerdictWord verdict, String point) {}

  @Override
  public void check(RuleBase base, Findings findings) {
    Map<Saying, AuthoredRule> first = new LinkedHashMap<>();
    base.rules()
        .forEach(
            rule ->
                saying(rule)
                    .flatMap(saying -> Optional.ofNullable(first.putIfAbsent(saying, rule)))
                    .filter(other -> !other.id().equals(rule.id())) // told as a repeated id
                    .ifPresent(other -> add(rule, other, findings)));
  }

  private static Optional<Saying> saying(AuthoredRule rule) {
    VerdictCall call = new VerdictCall(rule.block().action());
    return call.verdict()
        .filter(verdict -> call.isWhole() && !rule.patterns().isEmpty())
        .map(
            verdict ->
                new Saying(RuleForm.of(rule), verdict, call.point().map(Token::value).orElse("")));
  }

  private static void add(AuthoredRule rule, AuthoredRule other, Findings findings) {
    Spot there = other.spot(other.block().nameOffset());
    findings.add(
        LintKind.SAME_RULE,
        rule,
        rule.block().nameOffset(),
        "the rule says what %s says in %s line %d, and its reader gets two reasons for one"
            .formatted(other.id(), there.file(), there.line()),
        "take one of them out, and put the sources of both into the other");
  }
}
