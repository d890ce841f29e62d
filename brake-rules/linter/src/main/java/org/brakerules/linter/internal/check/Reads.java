package org.brakerules.linter.internal.check;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Constraint.Binding;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.FactType;
import org.brakerules.linter.internal.language.Vocabulary;
import org.brakerules.linter.internal.table.Selector;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.model.part.PartKind;

/** What the rules and limits of a rule base look at. */
final class Reads {

  private static final String OF_PART = "part.";

  /** Something that a fact or part has. */
  private record Property(String owner, String name) {}

  private final Set<PartKind> parts = new HashSet<>();
  private final Set<Property> byRules = new HashSet<>();
  private final Set<Property> byTables = new HashSet<>();
  private final Set<String> asked = new HashSet<>();

  Reads(RuleBase base) {
    base.rules().forEach(this::addRule);
    base.limits()
        .forEach(row -> byTables.add(new Property(row.text("part"), row.text("property"))));
    Stream.concat(base.limits(), base.points()).forEach(this::addSelector);
  }

  /**
   * Whether every rule and limit can be read; otherwise what one of them looks at may be missing
   * here.
   */
  static boolean areWhole(RuleBase base) {
    return base.limits().allMatch(row -> TablePropertyCheck.measurement(row).isPresent())
        && base.rules()
            .allMatch(
                rule ->
                    rule.conditions().isPresent()
                        && rule.patterns().stream().allMatch(Reads::isKnown));
  }

  /** The properties that a pattern names. */
  static Stream<Token> properties(Pattern pattern) {
    return Stream.concat(
        pattern.comparisons().map(Comparison::property),
        pattern.constraints().stream()
            .flatMap(constraint -> constraint.binding().stream())
            .map(Binding::property));
  }

  /** Whether a rule looks at a part of this kind. */
  boolean part(PartKind kind) {
    return parts.contains(kind);
  }

  /** Whether a rule looks at a property of a part. */
  boolean property(PartKind kind, String property) {
    return byRules.contains(new Property(kind.id(), property));
  }

  /** Whether a rule, a limit or the choice of a row looks at what a point asks for. */
  boolean point(Row point) {
    String name = point.text("property");
    if (name.startsWith(Point.OF_LAYOUT)) {
      String attribute = name.substring(Point.OF_LAYOUT.length());
      return byRules.contains(new Property(Vocabulary.BRAKE, attribute))
          || byTables.contains(new Property("", attribute));
    }
    Property property = new Property(point.text("part"), name);
    return byRules.contains(property)
        || byTables.contains(property)
        || asked.contains(point.text("id"));
  }

  private static boolean isKnown(Pattern pattern) {
    return pattern
        .fact()
        .filter(
            fact ->
                properties(pattern).allMatch(property -> fact.typeOf(property.text()).isPresent()))
        .isPresent();
  }

  private void addRule(AuthoredRule rule) {
    for (Pattern pattern : rule.patterns()) {
      pattern.fact().flatMap(FactType::kind).ifPresent(parts::add);
      String owner =
          pattern.fact().flatMap(FactType::kind).map(PartKind::id).orElse(pattern.type());
      properties(pattern).forEach(property -> byRules.add(new Property(owner, property.text())));
    }
    new VerdictCall(rule.block().action()).point().ifPresent(point -> asked.add(point.value()));
  }

  private void addSelector(Row row) {
    Selector.read(row.text("applies-to")).terms().forEach(term -> add(row, term.attribute()));
  }

  private void add(Row row, String attribute) {
    if (attribute.startsWith(OF_PART)) {
      byTables.add(new Property(row.text("part"), attribute.substring(OF_PART.length())));
    } else if (attribute.startsWith(Point.OF_LAYOUT)) {
      String name = attribute.substring(Point.OF_LAYOUT.length());
      byTables.add(new Property("", name.split("\\.", 2)[0]));
    }
  }
}
