package org.brakerules.internal.engine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.internal.fact.Verdicts;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Part;
import org.jspecify.annotations.Nullable;
import org.kie.api.runtime.rule.AgendaFilter;
import org.kie.api.runtime.rule.Match;

/**
 * Hears every match before its rule fires, and every verdict while it fires, and so knows which
 * rule said what of which part on which facts.
 */
final class Listening implements AgendaFilter {

  private final Map<String, RuleText> texts;
  private final Consumer<Replaced> insert;
  private final Predicate<String> speaks;
  private final List<Finding> findings = new ArrayList<>();
  private final Set<Replaced> replaced = new HashSet<>();
  private final Verdicts verdicts = new Verdicts(this::heard);
  private @Nullable Match speaking;

  /**
   * Listens to a session.
   *
   * @param texts the texts of the rules by name
   * @param insert takes the markers
   * @param speaks whether a rule of a name may speak
   */
  Listening(Map<String, RuleText> texts, Consumer<Replaced> insert, Predicate<String> speaks) {
    this.texts = texts;
    this.insert = insert;
    this.speaks = speaks;
  }

  Verdicts verdicts() {
    return verdicts;
  }

  List<Finding> findings() {
    return findings;
  }

  @Override
  public boolean accept(Match match) {
    speaking = match;
    return speaks.test(match.getRule().getName());
  }

  private void heard(Verdict verdict, Part part, String point) {
    Match match = speaking;
    RuleText text = match == null ? null : texts.get(match.getRule().getName());
    if (match == null || text == null) {
      throw new IllegalStateException("A verdict on " + part.place() + " without a rule.");
    }
    Finding finding = new Finding(text, verdict, part, point, List.copyOf(match.getObjects()));
    findings.add(finding);
    finding.marker().ifPresent(this::markReplaced);
  }

  /** Once per kind and wheel end is enough for every consequence, and keeps the rules at rest. */
  private void markReplaced(Replaced marker) {
    if (replaced.add(marker)) {
      insert.accept(marker);
    }
  }
}
