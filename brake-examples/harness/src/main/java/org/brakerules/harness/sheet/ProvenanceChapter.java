package org.brakerules.harness.sheet;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.brakerules.harness.html.Markup;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;

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
    page.element("p", "Sources, by their standing: " + sources() + ".");
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

  private String sources() {
    Map<Standing, Set<String>> titles = new TreeMap<>();
    for (Reason reason : reasons()) {
      for (Source source : reason.source()) {
        titles.computeIfAbsent(source.standing(), none -> new TreeSet<>()).add(source.title());
      }
    }
    return titles.entrySet().stream()
        .map(one -> one.getKey().inWords() + ": " + String.join("; ", one.getValue()))
        .collect(Collectors.joining(" / "));
  }

  private List<Reason> reasons() {
    return decisions.stream().flatMap(one -> one.reasons().stream()).toList();
  }
}
