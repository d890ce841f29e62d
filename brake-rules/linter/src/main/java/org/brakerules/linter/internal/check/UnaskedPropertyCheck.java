package org.brakerules.linter.internal.check;

import java.util.List;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.FactType;
import org.brakerules.linter.internal.language.ModelProperty;
import org.brakerules.linter.internal.language.Vocabulary;
import org.brakerules.linter.internal.language.Words;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.PartKind;

/** A rule that looks at what no inspection point asks for waits for something nobody states. */
final class UnaskedPropertyCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    for (Pattern pattern : rule.patterns()) {
      pattern
          .fact()
          .flatMap(FactType::kind)
          .ifPresent(kind -> checkPart(rule, pattern, kind, base, findings));
      if (pattern.type().equals(Vocabulary.BRAKE)) {
        checkBrake(rule, pattern, base, findings);
      }
    }
  }

  private static void checkPart(
      AuthoredRule rule, Pattern pattern, PartKind kind, RuleBase base, Findings findings) {
    List<String> asked =
        base.points()
            .filter(row -> row.text("part").equals(kind.id()))
            .map(row -> row.text("property"))
            .toList();
    Reads.properties(pattern)
        .filter(property -> isStated(kind, property))
        .filter(property -> !asked.contains(property.text()))
        .forEach(
            property ->
                add(
                    rule,
                    property,
                    property.text() + " of the " + kind.inWords(),
                    "add the point \"%s.%s\" to %s.points.csv"
                        .formatted(kind.id(), Words.ofProperty(property.text()), kind.id()),
                    findings));
  }

  /** Whether the technician states it; a reading in a rule is told for itself. */
  private static boolean isStated(PartKind kind, Token property) {
    return ModelProperty.find(kind, property.text())
        .filter(one -> !one.isMeasurement())
        .isPresent();
  }

  private static void checkBrake(
      AuthoredRule rule, Pattern pattern, RuleBase base, Findings findings) {
    List<String> ofLayout =
        ModelProperty.of(Layout.class).stream().map(ModelProperty::name).toList();
    List<String> asked = base.points().map(row -> row.text("property")).toList();
    Reads.properties(pattern)
        .filter(property -> ofLayout.contains(property.text()))
        .filter(property -> !asked.contains(Point.OF_LAYOUT + property.text()))
        .forEach(
            property ->
                add(
                    rule,
                    property,
                    Point.OF_LAYOUT + property.text(),
                    "add the point to the table of a part that hangs on it",
                    findings));
  }

  private static void add(
      AuthoredRule rule, Token property, String what, String remedy, Findings findings) {
    findings.add(
        LintKind.UNASKED_PROPERTY,
        rule,
        property,
        "no inspection point asks for " + what + ", so nobody states it and the rule stays silent",
        remedy);
  }
}
