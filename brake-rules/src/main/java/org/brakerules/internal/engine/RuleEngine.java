package org.brakerules.internal.engine;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.RuleBasePack;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.text.NearestName;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.jspecify.annotations.Nullable;

/** The compiled rules, ready to be asked by any number of threads. */
public final class RuleEngine {

  private final Map<String, RuleText> texts;
  private final List<RuleText> rules;
  private final Laws laws;
  private final Supplier<Map<String, Rule>> compiled;
  private final Function<List<?>, SessionPool> sessions;
  private final Tables tables;
  private final Predicate<String> speaks;

  /** As many as there are rule sets that switch rules off. */
  private final Map<Set<String>, RuleEngine> rests = new ConcurrentHashMap<>();

  private RuleEngine(
      Map<String, RuleText> texts,
      Supplier<Map<String, Rule>> compiled,
      Function<List<?>, SessionPool> sessions,
      Tables tables,
      Predicate<String> speaks) {
    this.texts = texts;
    this.rules = List.copyOf(texts.values());
    this.laws = new Laws(rules);
    this.compiled = compiled;
    this.sessions = sessions;
    this.tables = tables;
    this.speaks = speaks;
  }

  /** The rules that the build compiled. */
  public static RuleEngine load(Tables tables) {
    return load(tables, RuleBasePack.ofThisArtifact());
  }

  /**
   * The rules that the build compiled, held against their tables and wrote down in the pack of this
   * artifact.
   */
  public static RuleEngine load(Tables tables, RuleBasePack pack) {
    String register = new String(pack.read(RuleRegister.FILE), StandardCharsets.UTF_8);
    Map<String, RuleText> texts = RuleRegister.read(register, tables.sources());
    SessionsOnDemand sessions =
        new SessionsOnDemand(CompiledRules::models, rule -> mayReplace(texts.get(rule.getName())));
    return new RuleEngine(
        texts,
        new Lazy<>(() -> byId(CompiledRules.models())),
        sessions::over,
        tables,
        texts::containsKey);
  }

  /**
   * An engine over rules as they were written, put together without a compiler.
   *
   * @param files the files that the rules were read from
   * @throws RuleBaseException if a rule names something the tables do not know
   */
  public static RuleEngine ofWritten(List<WrittenRule> rules, Tables tables, RuleBaseFiles files) {
    return of(List.of(RuleAssembly.model(rules)), tables, files);
  }

  /** An engine over the given models; tests change the order of their rules. */
  static RuleEngine of(List<Model> models, Tables tables, RuleBaseFiles files) {
    Map<String, Rule> compiled = byId(models);
    Map<String, RuleText> texts = RuleTexts.of(models, tables, files);
    SessionPool sessions =
        new SessionPool(
            CompiledRules.ruleBase(models),
            FactSieve.of(models, rule -> mayReplace(texts.get(rule.getName())))::sift);
    return new RuleEngine(texts, () -> compiled, facts -> sessions, tables, texts::containsKey);
  }

  private static Map<String, Rule> byId(List<Model> models) {
    return models.stream()
        .flatMap(model -> model.getRules().stream())
        .collect(Collectors.toMap(Variant::id, rule -> rule));
  }

  /** A variant that has no text yet may say anything. */
  private static boolean mayReplace(@Nullable RuleText text) {
    return text == null || text.verdict() == Verdict.REPLACE;
  }

  /** The same rules in other sessions; what is measured beside the kept ones goes through here. */
  RuleEngine in(SessionPool others) {
    return new RuleEngine(texts, compiled, facts -> others, tables, speaks);
  }

  /**
   * The same rules without one of them.
   *
   * @param ruleId the rule that keeps silent
   */
  public RuleEngine without(String ruleId) {
    String silent = name(ruleId);
    Map<String, RuleText> told = new LinkedHashMap<>(texts);
    told.remove(silent);
    return new RuleEngine(
        told,
        new Lazy<>(() -> without(ruleId, compiled.get())),
        sessions,
        tables,
        name -> !name.equals(silent) && speaks.test(name));
  }

  private static Map<String, Rule> without(String ruleId, Map<String, Rule> compiled) {
    Map<String, Rule> others = new HashMap<>(compiled);
    others.remove(ruleId);
    return others;
  }

  /** The name the engine knows a rule by. */
  private String name(String ruleId) {
    for (Map.Entry<String, RuleText> told : texts.entrySet()) {
      if (told.getValue().id().equals(ruleId)) {
        return told.getKey();
      }
    }
    return rule(ruleId).getName();
  }

  /** The same rules without those that a rule set switches off; the same engine if it has none. */
  public RuleEngine without(Collection<String> ruleIds) {
    return ruleIds.isEmpty() ? this : rests.computeIfAbsent(Set.copyOf(ruleIds), this::rest);
  }

  private RuleEngine rest(Set<String> ruleIds) {
    RuleEngine rest = this;
    for (String id : ruleIds) {
      rest = rest.without(id);
    }
    return rest;
  }

  /**
   * The same rules with a variant in the place of the rule it was made from.
   *
   * @param variantId the id of the variant
   */
  public RuleEngine with(String variantId) {
    Rule variant = rule(variantId);
    String id = Variant.original(variant);
    Rule original = rule(id);
    Map<String, Rule> exchanged = new HashMap<>(compiled.get());
    exchanged.put(id, variant);
    Map<String, RuleText> told = new LinkedHashMap<>(texts);
    RuleText text = Objects.requireNonNull(texts.get(original.getName()));
    told.put(variant.getName(), RuleTexts.variant(text, variant));
    Predicate<String> others = name -> !name.equals(original.getName()) && speaks.test(name);
    return new RuleEngine(
        told, () -> exchanged, sessions, tables, others.or(name -> name.equals(variant.getName())));
  }

  /** Every rule, in the order of its id. */
  public List<RuleText> rules() {
    return rules;
  }

  /** Those of the rules that cite a law. */
  public Laws laws() {
    return laws;
  }

  /**
   * Asks the rules what they find in these facts.
   *
   * @throws RuleBaseException if a rule asks for an inspection point that does not exist
   */
  public List<Finding> fire(List<?> facts) {
    List<Finding> findings = sessions.apply(facts).fire(facts, texts, speaks);
    findings.forEach(this::checkPoint);
    return findings;
  }

  /**
   * On which facts each rule matches, variants among them, while the rules speak that may.
   *
   * @return the facts of each match, by the name of the rule
   */
  public Map<String, Set<List<Object>>> matches(List<?> facts) {
    return sessions.apply(facts).matches(facts, texts, speaks);
  }

  /**
   * How near these facts came to each condition of a rule.
   *
   * @param speaksOf which facts the verdict of the rule may be of
   * @throws IllegalArgumentException if there is no such rule
   */
  public WhyNot whyNot(String ruleId, Collection<?> facts, Predicate<Object> speaksOf) {
    return WhyNot.of(rule(ruleId), facts, speaksOf);
  }

  private Rule rule(String id) {
    Rule rule = compiled.get().get(id);
    if (rule == null) {
      throw new IllegalArgumentException(
          "\""
              + id
              + "\" is no rule of this rule base"
              + NearestName.of(id, compiled.get().keySet())
                  .map(near -> "; did you mean \"" + near + "\"?")
                  .orElse("."));
    }
    return rule;
  }

  private void checkPoint(Finding finding) {
    String point = finding.point();
    if (!point.isEmpty() && tables.points().find(point).isEmpty()) {
      throw new RuleBaseException(
          "Rule "
              + finding.rule().id()
              + " asks for the point \""
              + point
              + "\", which is in no table of points.");
    }
  }
}
