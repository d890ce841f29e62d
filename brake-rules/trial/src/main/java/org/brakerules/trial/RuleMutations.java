package org.brakerules.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.internal.RuleBase;
import org.brakerules.internal.decide.DecisionMaker;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.trial.internal.change.Change;
import org.brakerules.trial.internal.change.Names;
import org.brakerules.trial.internal.change.RuleChanges;

/**
 * The changed rules of one component. They lie in one rule base beside the rules they were made
 * from, so that a job is matched once to learn for which of them it makes any difference.
 */
final class RuleMutations {

  private record Variant(WrittenRule original, WrittenRule changed, String words) {}

  private record Matched(TrialCase of, Map<String, Set<List<Object>>> matches) {}

  private final List<WrittenRule> own;
  private final List<Variant> variants;
  private final List<TrialCase> cases;
  private final RuleBase base;

  RuleMutations(
      Path resources,
      List<WrittenRule> rules,
      String component,
      Names names,
      List<TrialCase> cases) {
    this.own = rules.stream().filter(rule -> component(rule).equals(component)).toList();
    this.variants = variants(own, names);
    this.cases = cases;
    this.base =
        TrialRules.with(resources, rules, variants.stream().map(Variant::changed).toList()).base();
  }

  int tried() {
    return own.size() + variants.size();
  }

  /** The rule base the changes were made of. */
  RuleBase base() {
    return base;
  }

  List<Mutant> survivors() {
    List<Matched> matched = cases.parallelStream().map(this::matched).toList();
    Stream<Mutant> leftOut =
        own.stream()
            .filter(rule -> survives(rule, matched))
            .map(rule -> mutant(rule, "rule left out"));
    List<Mutant> changed =
        variants.parallelStream()
            .filter(variant -> survives(variant, matched))
            .map(variant -> mutant(variant.original(), variant.words()))
            .toList();
    return Stream.concat(leftOut, changed.stream())
        .sorted(Comparator.comparing(Mutant::of))
        .toList();
  }

  private static List<Variant> variants(List<WrittenRule> own, Names names) {
    List<Variant> variants = new ArrayList<>();
    for (WrittenRule rule : own) {
      int number = 1;
      for (Change change : RuleChanges.of(rule, names)) {
        variants.add(new Variant(rule, change.rule().asVariant(number++), change.words()));
      }
    }
    return variants;
  }

  private Matched matched(TrialCase one) {
    return new Matched(one, new DecisionMaker(one.job(), base.tables(), base.engine()).matches());
  }

  private boolean survives(WrittenRule rule, List<Matched> matched) {
    TrialRules without = with(base.engine().without(rule.id()));
    return matched.stream()
        .filter(
            one -> one.matches().containsKey(rule.name()) || one.of().rules().contains(rule.id()))
        .sorted(Comparator.comparing(one -> !one.of().rules().contains(rule.id())))
        .allMatch(one -> without.satisfy(one.of()));
  }

  private boolean survives(Variant variant, List<Matched> matched) {
    WrittenRule original = variant.original();
    boolean sameConditions = original.patterns().equals(variant.changed().patterns());
    TrialRules changed = with(base.engine().with(variant.changed().id()));
    return matched.stream()
        .filter(
            one ->
                one.of().rules().contains(original.id())
                    || (sameConditions
                        ? one.matches().containsKey(original.name())
                        : differs(one, original, variant.changed())))
        .sorted(Comparator.comparing(one -> !one.of().rules().contains(original.id())))
        .allMatch(one -> changed.satisfy(one.of()));
  }

  private static boolean differs(Matched one, WrittenRule original, WrittenRule changed) {
    Set<List<Object>> before = one.matches().getOrDefault(original.name(), Set.of());
    Set<List<Object>> after = one.matches().getOrDefault(changed.name(), Set.of());
    return !before.equals(after);
  }

  private TrialRules with(RuleEngine engine) {
    return new TrialRules(new RuleBase(base.tables(), engine, base.version()));
  }

  private static Mutant mutant(WrittenRule rule, String words) {
    String component = component(rule);
    return new Mutant(rule.id(), component + "/" + component + ".drl", words);
  }

  static String component(WrittenRule rule) {
    String id = rule.id();
    return id.substring(0, id.lastIndexOf('-')).toLowerCase(Locale.ROOT);
  }
}
