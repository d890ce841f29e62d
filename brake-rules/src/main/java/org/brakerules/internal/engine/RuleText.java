package org.brakerules.internal.engine;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.part.PartKind;

/** What a rule says about itself. */
public interface RuleText {

  /** The id, such as {@code CAMSHAFT-BUSHING-010}. */
  String id();

  /** The title. */
  String title();

  /** The finding, with names in braces. */
  Sentence because();

  /** What to do; empty if nothing. */
  Sentence action();

  /** Where it comes from. */
  List<Source> sources();

  /** The rule sets whose law it cites. */
  Set<RuleSet> laws();

  /** The kind of part its verdict is of. */
  PartKind subject();

  /** The one verdict it gives. */
  Verdict verdict();

  /** Everything it reads of a job, by the names the tables use. */
  List<String> reads();

  /** What it reads beside the part it speaks of. */
  List<String> readsBeside();

  /** The kinds of axle it is for; empty if for all. */
  Set<AxleKind> axleKinds();

  /** The rule as its file has it. */
  String text();

  /** The properties its conditions look at, by the fact they look at. */
  Map<Class<?>, List<String>> conditions();

  /** The folder of the rule, such as {@code camshaft-bushing}. */
  default String component() {
    return id().substring(0, id().lastIndexOf('-')).toLowerCase(Locale.ROOT);
  }

  /** Whether it can speak of parts of such an axle; where the kind is not stated, it can. */
  default boolean isFor(AxleKind axle) {
    return axleKinds().isEmpty() || axle == AxleKind.UNKNOWN || axleKinds().contains(axle);
  }

  /** The properties its conditions look at on facts of a type. */
  default List<String> conditionsOn(Class<?> fact) {
    return conditions().getOrDefault(fact, List.of());
  }
}
