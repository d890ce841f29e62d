package org.brakerules.harness.reference;

/** The first page: what the book holds and where. */
final class ContentsPage {

  private final Material material;

  ContentsPage(Material material) {
    this.material = material;
  }

  Page page() {
    return new Page(
        "README.md",
        """
        # Reference

        What the rule base holds, page by page. From a reason in a report it is three clicks to \
        its source and its cases: the list of rules, the rule, the clause or the case.

        - [Rules](rules.md), every id a report can print
        - [General rules](general-rules.md), which hold for every part
        - [Limits](limits.md), every row with all it says
        - [From clause to case](traceability.md): what rests on each clause of each source
        - [Conflicts between sources](conflicts.md), and which side the default takes
        - [Standing](standing.md): what rests on common practice or memory alone
        - [Sources](sources.md), with their standing
        - [Decision tables](decision-tables.md): what is found, row by row, and the rules that \
        answer it
        - [Cautions](cautions.md)

        ## Components

        """
            + components());
  }

  private MarkdownTable components() {
    MarkdownTable table =
        new MarkdownTable("Component", "Rules", "Limits", "Inspection points", "Cases");
    for (String component : material.components()) {
      table.row(
          "[" + component.replace('-', ' ') + "](components/" + component + ".md)",
          String.valueOf(material.rulesOf(component).size()),
          String.valueOf(Material.ids(material.limitsOf(component)).count()),
          String.valueOf(material.pointsOf(component).size()),
          String.valueOf(material.casesOf(component).size()));
    }
    return table;
  }
}
