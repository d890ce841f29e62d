package org.brakerules.harness.sheet;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.brakerules.harness.html.Markup;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.decision.Source;

/** What the sheet rests on: the rule base, the rules that spoke, and their sources. */
final class ProvenanceChapter {

  private static final int FINGERPRINT_SHOWN = 12;

  private final Markup page;
  private final SheetMaterial material;
  private final List<Decision> decisions;

  ProvenanceChapter(Markup page, SheetMaterial material, List<Decision> decisions) {
    this.page = page;
    this.material = material;
    this.decisions = decisions;
  }

  static String version(RuleBaseVersion version) {
    String fingerprint = version.fingerprint();
    return version.version()
        + ", fingerprint "
        + fingerprint.substring(0, Math.min(FINGERPRINT_SHOWN, fingerprint.length()));
  }

  /**
   * Writes it.
   *
   * @param named the rules that the page names with its parts
   */
  void write(Set<String> named) {
    page.open("section", "class", "provenance").element("h2", "What this rests on");
    page.element(
        "p",
        "Rule base "
            + material.decision().ruleBase().version()
            + ", fingerprint "
            + material.decision().ruleBase().fingerprint()
            + "."
            + rules(named));
    page.element("p", "Sources: " + String.join("; ", sources().values()) + ".");
    page.close();
  }

  private String rules(Set<String> named) {
    String others =
        reasons().stream()
            .map(Reason::rule)
            .filter(rule -> !named.contains(rule))
            .distinct()
            .sorted()
            .collect(Collectors.joining(", "));
    return others.isEmpty() ? "" : " Rules that spoke beside those named above: " + others + ".";
  }

  private Map<String, String> sources() {
    Map<String, String> words = new TreeMap<>();
    for (Reason reason : reasons()) {
      for (Source source : reason.source()) {
        words.put(source.id(), source.title() + " (" + source.standing().inWords() + ")");
      }
    }
    return words;
  }

  private List<Reason> reasons() {
    return decisions.stream().flatMap(one -> one.reasons().stream()).toList();
  }
}
