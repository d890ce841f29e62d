package org.brakerules.harness.coverage;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.harness.report.Page;
import org.brakerules.harness.report.Palette;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.trial.coverage.ListedItem;
import org.brakerules.trial.coverage.OpenItem;

/** A coverage as text: what is open first, then counts, then the detail of chosen components. */
public final class CoverageText {

  private static final int INDENT = 2;
  private static final int LABEL = 18;

  private final CoverageReport report;
  private final Page page = new Page(new Palette(false));

  private CoverageText(CoverageReport report) {
    this.report = report;
  }

  /** The text of a report. */
  public static String of(CoverageReport report) {
    CoverageText text = new CoverageText(report);
    text.write();
    return text.page.toString();
  }

  private void write() {
    RuleBaseVersion version = report.coverage().version();
    page.paragraph(
        0, "Coverage of rule base " + version.fingerprint() + ", version " + version.version());
    page.gap();
    page.paragraph(0, report.howShown());
    open(report.coverage().open());
    listed(
        "Open, with a reason in coverage-open.csv or unread.csv", report.coverage().mayStayOpen());
    listed("In coverage-open.csv, but not open; take it out", report.notNeeded());
    madeAlone(report.coverage().shownByMadeAlone());
    counts();
    if (!report.whole()) {
      new CoverageDetail(report.coverage(), page).write();
    }
  }

  private void open(List<OpenItem> items) {
    page.gap();
    page.paragraph(0, "Open: " + items.size());
    for (String component : items.stream().map(OpenItem::component).distinct().toList()) {
      page.gap();
      page.paragraph(INDENT, component.isEmpty() ? "sources" : component);
      items.stream()
          .filter(item -> item.component().equals(component))
          .forEach(item -> item(item.what(), item.id(), item.words()));
    }
  }

  private void listed(String heading, List<ListedItem> items) {
    if (!items.isEmpty()) {
      page.gap();
      page.paragraph(0, heading + ": " + items.size());
      page.gap();
      items.forEach(item -> item(item.what(), item.id(), item.reason()));
    }
  }

  private void madeAlone(List<String> rows) {
    if (!rows.isEmpty()) {
      page.gap();
      page.paragraph(0, "Rows of limits that jobs made by the program alone show: " + rows.size());
      page.gap();
      rows.forEach(row -> page.paragraph(2 * INDENT, row));
    }
  }

  private void item(String what, String id, String words) {
    page.labelled(2 * INDENT, what, LABEL, id);
    page.labelled(2 * INDENT, "", LABEL, words);
  }

  private void counts() {
    page.gap();
    page.paragraph(0, "Shown");
    page.gap();
    row("", ComponentCounts.COLUMNS);
    report.countsAndTotal().forEach(counts -> row(counts.name(), counts.cells()));
  }

  private void row(String name, List<String> cells) {
    String columns =
        cells.stream().map(cell -> "%13s".formatted(cell)).collect(Collectors.joining());
    page.append("%-22s".formatted(name) + columns + "\n");
  }
}
