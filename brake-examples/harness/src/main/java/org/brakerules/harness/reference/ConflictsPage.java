package org.brakerules.harness.reference;

import java.util.stream.Collectors;

/** Where the sources differ, and which side the default takes. */
final class ConflictsPage {

  private static final Links LINKS = Links.FROM_THE_TOP;

  private final Material material;

  ConflictsPage(Material material) {
    this.material = material;
  }

  Page page() {
    String conflicts =
        material.conflicts().stream().map(this::conflict).collect(Collectors.joining("\n"));
    return new Page(
        "conflicts.md",
        """
        # Conflicts between sources

        Where two texts do not say the same, or one text differs from itself, and which side the \
        default takes. A maker's limit that the job supplies comes before every default but the \
        law of its rule set.

        """
            + conflicts);
  }

  private String conflict(Conflict conflict) {
    RuleBaseFiles.Row row = conflict.row();
    MarkdownTable table = new MarkdownTable("Source", "Says");
    table.row(source(row.get("source-a")), row.get("says-a"));
    table.row(source(row.get("source-b")), row.get("says-b"));
    return "## "
        + conflict.id()
        + "\n\n"
        + row.get("what")
        + ".\n\n"
        + table
        + "\nThe default takes "
        + row.get("default-takes")
        + ". "
        + row.get("why")
        + "\n\nConcerns "
        + conflict.concerns().stream().map(this::concerned).collect(Collectors.joining(", "))
        + ".\n";
  }

  private static String source(String citation) {
    return citation.isEmpty() ? "no source of this rule base" : LINKS.clause(citation);
  }

  private String concerned(String id) {
    return material.rule(id).map(LINKS::rule).orElseGet(() -> LINKS.limit(id));
  }
}
