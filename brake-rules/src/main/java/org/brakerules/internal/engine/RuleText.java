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

/**
 * What a rule says about itself.
 *
 * @param id the id, such as {@code CAMSHAFT-BUSHING-010}
 * @param title the title
 * @param because the finding, with names in braces
 * @param action what to do; empty if nothing
 * @param sources where it comes from
 * @param laws the rule sets whose law it cites
 * @param subject the kind of part its verdict is of
 * @param verdict the one verdict it gives
 * @param reads everything it reads of a job, by the names the tables use
 * @param readsBeside what it reads beside the part it speaks of
 * @param axleKinds the kinds of axle it is for; empty if for all
 * @param text the rule as its file has it
 * @param conditions the properties its conditions look at, by the fact they look at
 */
public record RuleText(
    String id,
    String title,
    Sentence because,
    Sentence action,
    List<Source> sources,
    Set<RuleSet> laws,
    PartKind subject,
    Verdict verdict,
    List<String> reads,
    List<String> readsBeside,
    Set<AxleKind> axleKinds,
    String text,
    Map<Class<?>, List<String>> conditions) {

  /** The folder of the rule, such as {@code camshaft-bushing}. */
  public String component() {
    return id.substring(0, id.lastIndexOf('-')).toLowerCase(Locale.ROOT);
  }

  /** Whether it can speak of parts of such an axle; where the kind is not stated, it can. */
  public boolean isFor(AxleKind axle) {
    return axleKinds.isEmpty() || axle == AxleKind.UNKNOWN || axleKinds.contains(axle);
  }

  /** The properties its conditions look at on facts of a type. */
  public List<String> conditionsOn(Class<?> fact) {
    return conditions.getOrDefault(fact, List.of());
  }

  RuleText withConditions(Map<Class<?>, List<String>> others) {
    return new RuleText(
        id,
        title,
        because,
        action,
        sources,
        laws,
        subject,
        verdict,
        reads,
        readsBeside,
        axleKinds,
        text,
        others);
  }
}
