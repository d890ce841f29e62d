package org.brakerules.trial.internal.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.coverage.ConditionCoverage;
import org.brakerules.trial.coverage.RuleCoverage;

/** What cases show of rules. */
public final class RuleCoverages {

  private record OnCase(BenchedCase of, Trying trying) {}

  private final WrittenRule rule;
  private final TriedRule tried;
  private final List<OnCase> onCases;

  private RuleCoverages(WrittenRule rule, List<BenchedCase> cases) {
    this.rule = rule;
    this.tried = new TriedRule(rule);
    this.onCases =
        cases.stream()
            .sorted(
                Comparator.comparing((BenchedCase one) -> !isNamedIn(one))
                    .thenComparing(one -> !isOfComponent(one)))
            .map(one -> new OnCase(one, Trying.of(tried, one)))
            .toList();
  }

  /** What cases show of each rule, in the order of their ids. */
  public static List<RuleCoverage> of(List<WrittenRule> rules, List<BenchedCase> cases) {
    return rules.parallelStream()
        .map(rule -> new RuleCoverages(rule, cases).coverage())
        .sorted(Comparator.comparing(RuleCoverage::id))
        .toList();
  }

  private RuleCoverage coverage() {
    return new RuleCoverage(
        rule.id(),
        component(),
        rule.name().substring(rule.id().length() + 1),
        cases(this::fires),
        cases(one -> isAbout(one) && !fires(one) && one.trying().near()),
        cases(one -> isNamedIn(one.of()) && !fires(one) && !one.trying().near()),
        conditions());
  }

  /** What the engine says counts, not what is tried here. */
  private boolean fires(OnCase one) {
    return one.of().fired().contains(rule.name());
  }

  /** Elsewhere the part is there and sound, which comes near most rules and means nothing. */
  private boolean isAbout(OnCase one) {
    return isNamedIn(one.of()) || isOfComponent(one.of());
  }

  private boolean isNamedIn(BenchedCase one) {
    return one.named().contains(rule.id());
  }

  private boolean isOfComponent(BenchedCase one) {
    return one.name().component().equals(component());
  }

  private List<ConditionCoverage> conditions() {
    List<ConditionCoverage> coverages = new ArrayList<>();
    Map<String, Integer> written = new HashMap<>();
    for (TriedRule.Step step : tried.steps()) {
      if (step.negated()) {
        coverages.add(condition(step.number(), step.number(), written));
      } else {
        for (TriedRule.Test test : step.tests()) {
          for (int i = 0; i < test.anyOf().size(); i++) {
            coverages.add(condition(test.number() + i, test.number(), written));
          }
        }
      }
    }
    return coverages;
  }

  /** Alternatives fail together, and the first of them stands for all. */
  private ConditionCoverage condition(int number, int first, Map<String, Integer> written) {
    String text = tried.conditions().get(number);
    int time = written.merge(text, 1, Integer::sum);
    return new ConditionCoverage(
        rule.id() + " " + text + (time > 1 ? " (" + time + ")" : ""),
        text,
        cases(one -> one.trying().holds(number)),
        failing(first),
        cases(one -> one.trying().fails(first) && fires(one)));
  }

  /** Where it also holds for another part, a reader would look at the wrong one. */
  private List<CaseName> failing(int condition) {
    Map<Boolean, List<CaseName>> holdingForAnother =
        onCases.stream()
            .filter(one -> one.trying().fails(condition) && !fires(one))
            .collect(
                Collectors.partitioningBy(
                    one -> one.trying().holdsForAnother(condition),
                    Collectors.mapping(one -> one.of().name(), Collectors.toList())));
    return Stream.of(false, true)
        .flatMap(another -> holdingForAnother.getOrDefault(another, List.of()).stream())
        .toList();
  }

  private List<CaseName> cases(Predicate<OnCase> chosen) {
    return onCases.stream().filter(chosen).map(one -> one.of().name()).toList();
  }

  private String component() {
    return rule.id().substring(0, rule.id().lastIndexOf('-')).toLowerCase(Locale.ROOT);
  }
}
