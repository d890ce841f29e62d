package org.brakerules.internal.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.brakerules.internal.fact.BeyondLimit;
import org.brakerules.internal.fact.Brake;
import org.brakerules.internal.fact.Disturbed;
import org.brakerules.internal.fact.ReadingsContradict;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Source;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.text.NearestName;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;

/**
 * Reads what each compiled rule says about itself, and refuses a rule that names a source, a limit
 * or a value that does not exist: in the build, not in the shop.
 */
final class RuleTexts {

  private static final Pattern AXLE_KIND = Pattern.compile("axleKind\\s*==\\s*AxleKind\\.(\\w+)");
  private static final Set<String> ALWAYS = Set.of("part", "wheelEnd");
  private static final Map<Class<?>, Set<String>> WITH_FACT =
      Map.of(
          BeyondLimit.class, Set.of("measured", "limit", "beyondBy", "station"),
          Replaced.class, Set.of("replaced"),
          Disturbed.class, Set.of("disturbed"),
          ReadingsContradict.class, Set.of("reading", "otherReading"));

  private final Tables tables;
  private final Map<String, String> files;

  private RuleTexts(Tables tables, Map<String, String> files) {
    this.tables = tables;
    this.files = files;
  }

  /** The texts of all rules by the name the engine knows them by, in the order of their ids. */
  static Map<String, RuleText> of(List<Model> models, Tables tables, RuleBaseFiles base) {
    RuleTexts reader = new RuleTexts(tables, RuleFiles.texts(base));
    Map<String, RuleText> texts = new LinkedHashMap<>();
    models.stream()
        .flatMap(model -> model.getRules().stream())
        .sorted(Comparator.comparing(Rule::getName))
        .filter(rule -> !Variant.is(rule))
        .forEach(rule -> texts.put(rule.getName(), reader.read(rule)));
    return texts;
  }

  /** What a rule says about itself with the conditions of its variant. */
  static RuleText variant(RuleText original, Rule variant) {
    return ReadRule.of(original, conditions(Conditions.of(variant)));
  }

  private RuleText read(Rule rule) {
    String name = rule.getName();
    int blank = name.indexOf(' ');
    if (blank < 0) {
      throw mistake(rule, "has no title behind its id");
    }
    List<Conditions.Step> steps = Conditions.of(rule);
    checkLimits(rule, steps);
    String id = name.substring(0, blank);
    String file = files.get(id);
    if (file == null) {
      throw mistake(rule, "was compiled from a rule file that is not in the artifact");
    }
    List<Source> sources = sources(rule);
    RuleText text =
        new ReadRule(
            id,
            name.substring(blank + 1),
            new Sentence(metadata(rule, "because")),
            new Sentence(metadata(rule, "action")),
            sources,
            laws(sources),
            subject(rule, steps),
            RuleFiles.verdict(id, file),
            ReadBy.rule(steps),
            ReadBy.rule(steps.stream().filter(step -> !step.isSubject()).toList()),
            axleKinds(steps),
            file,
            conditions(steps));
    checkNames(rule, text, steps);
    return text;
  }

  private static PartKind subject(Rule rule, List<Conditions.Step> steps) {
    return steps.stream()
        .filter(Conditions.Step::isSubject)
        .flatMap(step -> PartKind.of(step.factType()).stream())
        .findFirst()
        .orElseThrow(() -> mistake(rule, "names no part as $part"));
  }

  private static String metadata(Rule rule, String key) {
    Object value = rule.getMetaData().get(key);
    if (value == null) {
      throw mistake(rule, "has no @" + key);
    }
    return value.toString();
  }

  private List<Source> sources(Rule rule) {
    return Arrays.stream(metadata(rule, "source").split(";"))
        .map(String::strip)
        .map(citation -> source(rule, citation))
        .toList();
  }

  private Set<RuleSet> laws(List<Source> cited) {
    return cited.stream()
        .flatMap(source -> tables.sources().lawOf(source).stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  private Source source(Rule rule, String citation) {
    return tables
        .sources()
        .find(citation)
        .orElseThrow(() -> mistake(rule, unknown("source", citation, tables.sources().ids())));
  }

  private static Set<AxleKind> axleKinds(List<Conditions.Step> steps) {
    return steps.stream()
        .filter(step -> step.factType() == Brake.class)
        .flatMap(step -> step.constraints().stream())
        .flatMap(constraint -> AXLE_KIND.matcher(Conditions.text(constraint)).results())
        .map(found -> AxleKind.valueOf(found.group(1)))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static Map<Class<?>, List<String>> conditions(List<Conditions.Step> steps) {
    Map<Class<?>, Set<String>> properties = new LinkedHashMap<>();
    for (Conditions.Step step : steps) {
      for (SingleConstraint constraint : step.constraints()) {
        properties
            .computeIfAbsent(step.factType(), type -> new LinkedHashSet<>())
            .addAll(Conditions.properties(constraint));
      }
    }
    Map<Class<?>, List<String>> lists = new LinkedHashMap<>();
    properties.forEach((type, names) -> lists.put(type, List.copyOf(names)));
    return lists;
  }

  private void checkLimits(Rule rule, List<Conditions.Step> steps) {
    for (Conditions.Step step : steps) {
      if (step.factType() != BeyondLimit.class) {
        continue;
      }
      for (String limit : limitsNamed(step)) {
        if (!tables.limits().ids().contains(limit)) {
          throw mistake(rule, unknown("limit", limit, tables.limits().ids()));
        }
      }
    }
  }

  /** The limits a pattern over {@link BeyondLimit} names. */
  private static List<String> limitsNamed(Conditions.Step step) {
    return step.constraints().stream()
        .filter(constraint -> Conditions.properties(constraint).contains("limit"))
        .flatMap(constraint -> Conditions.literals(constraint).stream())
        .toList();
  }

  private static void checkNames(Rule rule, RuleText text, List<Conditions.Step> steps) {
    Set<String> known = new LinkedHashSet<>(ALWAYS);
    steps.forEach(step -> known.addAll(WITH_FACT.getOrDefault(step.factType(), Set.of())));
    for (Sentence sentence : List.of(text.because(), text.action())) {
      for (String name : sentence.names()) {
        if (!known.contains(name)) {
          throw mistake(rule, unknown("name in a sentence of this rule", name, known));
        }
      }
    }
  }

  private static String unknown(String what, String name, Collection<String> known) {
    List<String> sorted = new ArrayList<>(known);
    sorted.sort(null);
    return "names \""
        + name
        + "\", which is no "
        + what
        + NearestName.of(name, known)
            .map(near -> "; did you mean \"" + near + "\"?")
            .orElse("; known are " + String.join(", ", sorted));
  }

  private static RuleBaseException mistake(Rule rule, String what) {
    return new RuleBaseException("Rule \"" + rule.getName() + "\" " + what + ".");
  }
}
