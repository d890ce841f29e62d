package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.FactType;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.model.part.PartKind;

/** A verdict that asks for a look or a measurement names a point of that very part. */
final class PointCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    new VerdictCall(rule.block().action())
        .point()
        .ifPresent(point -> check(rule, point, base, findings));
  }

  private static void check(AuthoredRule rule, Token point, RuleBase base, Findings findings) {
    if (!base.pointIds().contains(point.value())) {
      findings.add(
          LintKind.UNKNOWN_POINT,
          rule,
          point,
          "there is no inspection point \"" + point.value() + "\"",
          Remedy.known(
              point.value(),
              base.pointIds(),
              "add it to a table of points, or name one that is there"));
      return;
    }
    rule.patterns().stream()
        .filter(SubjectCheck::isSubject)
        .map(Pattern::fact)
        .flatMap(fact -> fact.flatMap(FactType::kind).stream())
        .filter(kind -> !partOf(point.value(), base).equals(kind.id()))
        .findFirst()
        .ifPresent(kind -> addOther(rule, point, kind, findings));
  }

  private static String partOf(String point, RuleBase base) {
    return base.points()
        .filter(row -> row.text("id").equals(point))
        .findFirst()
        .map((Row row) -> row.text("part"))
        .orElse("");
  }

  private static void addOther(AuthoredRule rule, Token point, PartKind kind, Findings findings) {
    findings.add(
        LintKind.POINT_OF_ANOTHER_PART,
        rule,
        point,
        "\"" + point.value() + "\" is no point of the " + kind.inWords() + ", which $part is",
        "name a point of the " + kind.inWords() + ", or let $part be the part the point is of");
  }
}
