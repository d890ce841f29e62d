package org.brakerules.internal.engine;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.part.PartKind;

/**
 * What a rule says about itself, read from the compiled rule.
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
public record ReadRule(
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
    Map<Class<?>, List<String>> conditions)
    implements RuleText {

  /** What a rule says about itself with the conditions of its variant. */
  static ReadRule of(RuleText original, Map<Class<?>, List<String>> others) {
    return new ReadRule(
        original.id(),
        original.title(),
        original.because(),
        original.action(),
        original.sources(),
        original.laws(),
        original.subject(),
        original.verdict(),
        original.reads(),
        original.readsBeside(),
        original.axleKinds(),
        original.text(),
        others);
  }
}
