package org.brakerules.harness.coverage;

import java.util.List;
import org.brakerules.harness.html.Markup;
import org.brakerules.trial.coverage.ClauseCoverage;
import org.brakerules.trial.coverage.SourceCoverage;

/** The table of the sources on the page, clause by clause. */
final class SourceTables {

  private final List<SourceCoverage> sources;
  private final Markup page;

  SourceTables(List<SourceCoverage> sources, Markup page) {
    this.sources = sources;
    this.page = page;
  }

  void write() {
    page.element("h2", "Sources", "id", "sources");
    page.table(
        "What rests on each source",
        List.of("Source", "Standing", "Clause", "Rules", "Limits", "Others"));
    for (SourceCoverage source : sources) {
      if (source.clauses().isEmpty()) {
        begin(source).element("td", "");
        page.open("td", "colspan", "3", "class", "open").words("open: nothing rests on it");
        page.closeTo("tr");
      }
      source.clauses().forEach(clause -> clause(source, clause));
    }
    page.endTable();
  }

  private void clause(SourceCoverage source, ClauseCoverage clause) {
    begin(source).element("td", clause.clause().isEmpty() ? "as a whole" : clause.clause());
    page.element("td", String.join(", ", clause.rules()));
    page.element("td", String.join(", ", clause.limits()));
    page.element("td", String.join(", ", clause.others())).close();
  }

  private Markup begin(SourceCoverage source) {
    page.open("tr").element("th", source.id() + ", " + source.title(), "scope", "row");
    return page.element("td", source.standing());
  }
}
