package org.brakerules.harness.reference;

import java.util.List;
import java.util.stream.Stream;

/** Two texts that do not say the same, and which of them the default follows. */
record Conflict(RuleBaseFiles.Row row) {

  static List<Conflict> all(RuleBaseFiles files) {
    return files.rows("conflicts.csv").stream().map(Conflict::new).toList();
  }

  String id() {
    return row.get("id");
  }

  /** The clauses on its two sides; a side that is no source of this rule base has none. */
  List<String> clauses() {
    return Stream.of("source-a", "source-b")
        .map(row::get)
        .filter(clause -> !clause.isEmpty())
        .toList();
  }

  /** The ids of the limits and rules that would say something else, were it settled otherwise. */
  List<String> concerns() {
    return row.names("concerns");
  }
}
