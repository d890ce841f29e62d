package org.brakerules.trial.internal.written;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import org.brakerules.internal.rule.WrittenAction;
import org.brakerules.internal.rule.WrittenComparison;
import org.brakerules.internal.rule.WrittenCondition;
import org.brakerules.internal.rule.WrittenPattern;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.rule.WrittenValue;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Constraint;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.language.FactType;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.model.part.PartKind;

/** Takes rules apart that the linter has found nothing wrong with. */
public final class WrittenRules {

  private static final java.util.regex.Pattern VERDICT =
      java.util.regex.Pattern.compile("verdict\\.(\\w+)\\((\\$\\w+)(?:,\"([^\"]+)\")?\\);");

  private WrittenRules() {}

  /**
   * Takes one rule apart.
   *
   * @throws IllegalArgumentException if it is outside the rule language
   */
  public static WrittenRule of(AuthoredRule rule) {
    Map<String, String> metadata =
        rule.block().metadata().stream()
            .collect(
                Collectors.toMap(
                    entry -> entry.key().text().replace("@", ""),
                    entry -> entry.text().map(Token::value).orElse("")));
    return new WrittenRule(
        rule.name(),
        metadata,
        rule.patterns().stream().map(WrittenRules::pattern).toList(),
        action(rule));
  }

  private static WrittenAction action(AuthoredRule rule) {
    String text = rule.block().action().stream().map(Token::text).collect(Collectors.joining());
    Matcher verdict = VERDICT.matcher(text);
    if (!verdict.matches()) {
      throw new IllegalArgumentException(rule.id() + " gives no verdict: " + text);
    }
    WrittenAction.Call call =
        Arrays.stream(WrittenAction.Call.values())
            .filter(one -> one.word().equals(verdict.group(1)))
            .findFirst()
            .orElseThrow();
    return new WrittenAction(call, verdict.group(2), Optional.ofNullable(verdict.group(3)));
  }

  private static WrittenPattern pattern(Pattern pattern) {
    FactType fact = pattern.fact().orElseThrow();
    return new WrittenPattern(
        type(fact),
        pattern.variable(),
        pattern.negated(),
        pattern.constraints().stream().map(one -> condition(one, fact)).toList());
  }

  private static Class<?> type(FactType fact) {
    return fact.kind().<Class<?>>map(PartKind::recordType).orElseGet(() -> notPart(fact.name()));
  }

  private static Class<?> notPart(String name) {
    try {
      return Class.forName("org.brakerules.internal.fact." + name);
    } catch (ClassNotFoundException e) {
      throw new IllegalArgumentException("There is no fact " + name + ".", e);
    }
  }

  private static WrittenCondition condition(Constraint constraint, FactType fact) {
    return constraint
        .binding()
        .<WrittenCondition>map(
            named -> new WrittenCondition.Named(named.variable().text(), named.property().text()))
        .orElseGet(() -> anyOf(constraint.comparisons(), fact));
  }

  private static WrittenCondition anyOf(List<Comparison> comparisons, FactType fact) {
    return new WrittenCondition.AnyOf(
        comparisons.stream().map(one -> comparison(one, fact)).toList());
  }

  private static WrittenComparison comparison(Comparison comparison, FactType fact) {
    String property = comparison.property().text();
    return new WrittenComparison(
        property,
        comparison.operator().is("=="),
        switch (comparison.valueKind()) {
          case TEXT -> new WrittenValue.Text(comparison.value().get(0).value());
          case VARIABLE -> new WrittenValue.Variable(comparison.value().get(0).text());
          case CONSTANT ->
              constant(
                  Objects.requireNonNull(fact.properties().get(property)),
                  comparison.constant().text());
          case NUMBER, OTHER ->
              throw new IllegalArgumentException(
                  comparison.valueText() + " is no value of a rule.");
        });
  }

  private static WrittenValue constant(Class<?> type, String name) {
    return Arrays.stream(type.getEnumConstants())
        .map(Enum.class::cast)
        .filter(one -> one.name().equals(name))
        .findFirst()
        .map(WrittenValue.Constant::new)
        .orElseThrow();
  }
}
