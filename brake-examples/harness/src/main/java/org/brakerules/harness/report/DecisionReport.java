package org.brakerules.harness.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.brakerules.harness.Counted;
import org.brakerules.harness.report.Palette.Ink;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.part.WheelEndPath;

/** A decision as a good foreman would write it down: what stops work first, what is fine last. */
public final class DecisionReport {

  private static final int FINGERPRINT_SHOWN = 12;

  private final JobDecision decision;
  private final Page page;

  private DecisionReport(JobDecision decision, Page page) {
    this.decision = decision;
    this.page = page;
  }

  /**
   * Writes the report.
   *
   * @param file the file the job came from; empty if there is only one
   */
  public static String of(JobDecision decision, String file, Palette palette) {
    Page page = new Page(palette);
    new DecisionReport(decision, page).write(file);
    return page.toString();
  }

  private void write(String file) {
    header(file);
    List<WheelEndNotes> notes = wheelEnds();
    notes.forEach(WheelEndNotes::writeHolds);
    notes.forEach(WheelEndNotes::write);
    cautions();
    SourceList.write(decision, page);
  }

  private void header(String file) {
    String reference = decision.reference().isEmpty() ? "without reference" : decision.reference();
    page.heading(0, "Brake job " + reference, Ink.TITLE);
    if (!file.isEmpty()) {
      page.labelled(2, "File", 12, file);
    }
    page.labelled(2, "Inspected", 12, decision.date() + ", scope " + inWords(decision.scope()));
    page.labelled(2, "Rule set", 12, decision.ruleSet().toString());
    page.labelled(2, "Rule base", 12, inWords(decision.ruleBase()));
    page.labelled(2, "In short", 12, inShort());
  }

  private static String inWords(RuleBaseVersion version) {
    String fingerprint = version.fingerprint();
    int shown = Math.min(FINGERPRINT_SHOWN, fingerprint.length());
    return version.version() + ", fingerprint " + fingerprint.substring(0, shown);
  }

  private static String inWords(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private String inShort() {
    return ("%s: %d on hold; %d to replace, %d undecided (%d of them not inspected),"
            + " %d to adjust, %d to clean, %s")
        .formatted(
            Counted.of(decision.decisions().size(), "part"),
            count(Decision::hold),
            count(Disposition.REPLACE),
            count(Disposition.UNDECIDED),
            count(WheelEndNotes::isNotInspected),
            count(Disposition.ADJUST),
            count(Disposition.CLEAN),
            Counted.of(count(Disposition.REUSE), "goes back", "go back"));
  }

  private long count(Disposition disposition) {
    return count(one -> one.disposition() == disposition);
  }

  private long count(Predicate<Decision> which) {
    return decision.decisions().stream().filter(which).count();
  }

  private List<WheelEndNotes> wheelEnds() {
    Map<WheelEndPath, List<Decision>> parts =
        decision.decisions().stream()
            .collect(
                Collectors.groupingBy(
                    one -> one.part().wheelEnd(), LinkedHashMap::new, Collectors.toList()));
    return parts.entrySet().stream()
        .map(
            one ->
                new WheelEndNotes(
                    one.getKey(),
                    one.getValue(),
                    decision.next(),
                    decision.ruleSet(),
                    !decision.holds().isEmpty(),
                    page))
        .toList();
  }

  private void cautions() {
    if (decision.cautions().isEmpty()) {
      return;
    }
    page.underlined("Cautions", Ink.TITLE, '=');
    decision
        .cautions()
        .forEach(
            caution ->
                page.labelled(
                    2, "-", 2, caution.text() + " [" + Wording.sources(caution.source()) + "]"));
  }
}
