package org.brakerules.harness.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.brakerules.compare.RuleSetComparison;
import org.brakerules.compare.RuleSetComparison.Pair;
import org.brakerules.harness.Counted;
import org.brakerules.harness.report.Palette.Ink;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Reason;

/** What differs of one job under two rule sets, side by side. */
public final class ComparisonReport {

  private static final int LABEL = 14;

  private final RuleSetComparison both;
  private final Page page = new Page(new Palette(false));

  private ComparisonReport(RuleSetComparison both) {
    this.both = both;
  }

  /**
   * Writes the report.
   *
   * @param file the file the job came from; empty if there is only one
   */
  public static String of(RuleSetComparison both, String file) {
    ComparisonReport report = new ComparisonReport(both);
    report.write(file);
    return report.page.toString();
  }

  private void write(String file) {
    String reference = both.here().reference();
    String name = reference.isEmpty() ? "without reference" : reference;
    page.heading(0, "Brake job " + name + " under two rule sets", Ink.TITLE);
    if (!file.isEmpty()) {
      page.labelled(2, "File", LABEL, file);
    }
    page.labelled(2, "Inspected", LABEL, both.here().date().toString());
    page.labelled(2, "Rule sets", LABEL, name(both.here()) + " (the job's), " + name(both.there()));
    List<Pair> differing = both.differing();
    page.labelled(
        2,
        "In short",
        LABEL,
        "%s, %s"
            .formatted(
                Counted.of(both.pairs().size(), "part"),
                differing.isEmpty() ? "none differs" : differing.size() + " differ"));
    differing.forEach(this::pair);
  }

  private void pair(Pair pair) {
    page.gap();
    page.paragraph(0, pair.here().part().toString());
    line(name(both.here()), pair.here(), pair.there());
    line(name(both.there()), pair.there(), pair.here());
  }

  private void line(String ruleSet, Decision one, Decision other) {
    page.labelled(2, ruleSet, LABEL, inWords(one) + only(one, other));
  }

  private static String inWords(Decision one) {
    return inWords(one.disposition())
        + (one.hold() ? ", on hold" : "")
        + "; on the road: "
        + inWords(one.road());
  }

  /** The reasons that the other rule set does not give. */
  private static String only(Decision one, Decision other) {
    List<String> theirs = other.reasons().stream().map(Reason::rule).toList();
    String own =
        one.reasons().stream()
            .filter(reason -> !theirs.contains(reason.rule()))
            .map(reason -> reason.rule() + " " + reason.sentence())
            .collect(Collectors.joining(" "));
    return own.isEmpty() ? "" : "; only here: " + own;
  }

  private static String name(JobDecision decision) {
    return decision.ruleSet().toString();
  }

  private static String inWords(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
