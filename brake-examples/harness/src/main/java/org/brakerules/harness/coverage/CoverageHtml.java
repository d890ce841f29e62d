package org.brakerules.harness.coverage;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.harness.html.Markup;
import org.brakerules.trial.coverage.Coverage;
import org.brakerules.trial.coverage.ListedItem;
import org.brakerules.trial.coverage.OpenItem;

/** A coverage as one page of HTML that needs nothing beside it, on screen or on paper. */
public final class CoverageHtml {

  private static final String STYLE =
      """
      :root { color-scheme: light dark; }
      body { font: 1rem/1.45 system-ui, sans-serif; margin: 0 auto; max-width: 80rem; padding: 1rem; }
      h2 { border-bottom: 2px solid; margin-top: 2.5rem; }
      .wide { overflow-x: auto; }
      table { border-collapse: collapse; margin: 1rem 0; width: 100%; }
      caption { font-weight: bold; text-align: left; }
      th, td { border: 1px solid; padding: .25rem .5rem; text-align: left; vertical-align: top; }
      td.open { border-width: 3px; font-weight: bold; }
      td, th { overflow-wrap: anywhere; }
      ul { margin: 0; padding-left: 1.2rem; }
      @media print {
        body { font-size: 9pt; max-width: none; padding: 0; }
        .wide { overflow: visible; }
        nav { display: none; }
        thead { display: table-header-group; }
        tr { break-inside: avoid; }
      }
      """;

  private final CoverageReport report;
  private final Markup page = new Markup();

  private CoverageHtml(CoverageReport report) {
    this.report = report;
  }

  /** The page of a report. */
  public static String of(CoverageReport report) {
    CoverageHtml html = new CoverageHtml(report);
    html.write();
    return "<!DOCTYPE html>\n" + html.page;
  }

  private void write() {
    Coverage coverage = report.coverage();
    page.open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
    head();
    page.open("body").element("h1", "Coverage of the rule base by its cases");
    page.element(
        "p",
        "Version "
            + coverage.version().version()
            + ", rule base "
            + coverage.version().fingerprint());
    page.element("p", report.howShown());
    contents();
    page.open("main");
    open(coverage.open());
    listed(
        "may-stay-open",
        "Open, with a reason in coverage-open.csv or unread.csv",
        coverage.mayStayOpen());
    listed("not-open", "In coverage-open.csv, but not open", report.notNeeded());
    madeAlone(coverage.shownByMadeAlone());
    counts();
    report.components().forEach(one -> new ComponentTables(one, coverage, page).write());
    new SourceTables(coverage.sources(), page).write();
    page.closeTo("html");
  }

  private void head() {
    page.open("head").empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.element("title", "Coverage of the rule base by its cases");
    page.element("style", STYLE).close();
  }

  private void contents() {
    page.open("nav", "aria-label", "Contents").open("ul");
    link("Open", "open");
    link("Shown, by component", "shown");
    link("Sources", "sources");
    page.closeTo("nav");
  }

  private void link(String words, String id) {
    page.open("li").element("a", words, "href", "#" + id).close();
  }

  private void open(List<OpenItem> items) {
    page.element("h2", "Open: " + items.size(), "id", "open");
    if (items.isEmpty()) {
      page.element("p", "Nothing is open.");
      return;
    }
    page.table("What the cases or the tables leave open", List.of("Component", "Id", "Open"));
    for (OpenItem item : items) {
      page.open("tr").element("td", item.component()).element("th", item.id(), "scope", "row");
      page.element("td", item.words() + " (" + item.what() + ")").close();
    }
    page.endTable();
  }

  private void listed(String id, String heading, List<ListedItem> items) {
    if (items.isEmpty()) {
      return;
    }
    page.element("h2", heading + ": " + items.size(), "id", id);
    page.table(heading, List.of("Id", "What", "Reason"));
    for (ListedItem item : items) {
      page.open("tr").element("th", item.id(), "scope", "row").element("td", item.what());
      page.element("td", item.reason()).close();
    }
    page.endTable();
  }

  private void madeAlone(List<String> rows) {
    if (rows.isEmpty()) {
      return;
    }
    String heading = "Rows of limits that jobs made by the program alone show: " + rows.size();
    page.element("h2", heading, "id", "made-alone").open("ul");
    rows.forEach(row -> page.element("li", row));
    page.close();
  }

  private void counts() {
    page.element("h2", "Shown, by component", "id", "shown");
    List<String> columns =
        Stream.concat(Stream.of("component"), ComponentCounts.COLUMNS.stream()).toList();
    page.table("How many are shown, of how many there are", columns);
    for (ComponentCounts counts : report.countsAndTotal()) {
      page.open("tr").open("th", "scope", "row");
      name(counts.name());
      page.close();
      counts.cells().forEach(cell -> page.element("td", cell));
      page.close();
    }
    page.endTable();
  }

  private void name(String name) {
    if (report.components().contains(name)) {
      page.element("a", name, "href", "#" + Markup.anchor("component", name));
    } else {
      page.words(name);
    }
  }
}
