package org.brakerules.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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

  private final Path resources;
  private final List<WrittenRule> rules;
  private final Names names;
  private final List<TrialCase> cases;
  private int tried;
  private RuleBase base;

  RuleMutations(Path resources, List<WrittenRule> rules, Names names, List<TrialCase> cases) {
    this.resources = resources;
    this.rules = rules;
    this.names = names;
    this.cases = cases;
    this.base = TrialRules.with(resources, rules, List.of()).base();
  }

  int tried() {
    return tried;
  }

  /** The rule base the changes were made of. */
  RuleBase base() {
    return base;
  }

  List<Mutant> survivors(String component) {
    List<WrittenRule> own =
        rules.stream().filter(rule -> component(rule).equals(component)).toList();
    List<Variant> variants = variants(own);
    base =
        TrialRules.with(resources, rules, variants.stream().map(Variant::changed).toList()).base();
    List<Matched> matched = cases.parallelStream().map(this::matched).toList();
    List<Mutant> survivors = new ArrayList<>();
    for (WrittenRule rule : own) {
      tried++;
      if (survives(rule, matched)) {
        survivors.add(mutant(rule, "rule left out"));
      }
    }
    tried += variants.size();
    variants.parallelStream()
        .filter(variant -> survives(variant, matched))
        .map(variant -> mutant(variant.original(), variant.words()))
        .forEachOrdered(survivors::add);
    survivors.sort(Comparator.comparing(Mutant::of));
    return survivors;
  }

  private List<Variant> variants(List<WrittenRule> own) {
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
    Map<String, Set<List<Object>>> matches =
        new DecisionMaker(one.job(), base.tables(), base.engine()).matches();
    Map<String, Set<List<Object>>> kept = new LinkedHashMap<>(matches);
    return new Matched(one, kept);
  }

  private boolean survives(WrittenRule rule, List<Matched> matched) {
    TrialRules without = with(base.engine().without(rule.id()));
    return matched.stream()
        .filter(
            one -> one.matches().containsKey(rule.name()) || one.of().rules().contains(rule.id()))
        .sorted(Comparator.comparing(one -> !one.of().rules().contains(rule.id())))
        .allMatch(one -> one.of().isAsExpected(without));
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
        .allMatch(one -> one.of().isAsExpected(changed));
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
