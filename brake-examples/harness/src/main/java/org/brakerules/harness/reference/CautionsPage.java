package org.brakerules.harness.reference;

import java.util.stream.Collectors;

/** Every caution, from which depth of work it is printed, and where it comes from. */
final class CautionsPage {

  private CautionsPage() {}

  static Page of(RuleBaseFiles files) {
    MarkdownTable table = new MarkdownTable("Caution", "From", "Text", "Source");
    for (RuleBaseFiles.Row caution : files.rows("cautions.csv")) {
      table.row(
          "`" + caution.get("id") + "`",
          caution.get("from"),
          caution.get("text"),
          caution.names("source").stream()
              .map(Links.FROM_THE_TOP::clause)
              .collect(Collectors.joining(", ")));
    }
    return new Page("cautions.md", "# Cautions\n\n" + table);
  }
}
