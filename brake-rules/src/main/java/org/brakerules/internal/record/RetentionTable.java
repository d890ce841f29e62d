package org.brakerules.internal.record;

import java.util.List;
import java.util.Optional;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.job.RuleSet;
import org.brakerules.record.Retention;

/** How long records are kept, by rule set. */
public final class RetentionTable {

  private static final String FILE = "/org/brakerules/work/retention.csv";

  private record Entry(Optional<RuleSet> ruleSet, Retention retention) {}

  private final List<Entry> entries;

  private RetentionTable(List<Entry> entries) {
    this.entries = entries;
  }

  /**
   * Reads the table of this artifact.
   *
   * @throws org.brakerules.internal.table.RuleBaseException if a row has a mistake
   */
  public static RetentionTable load(Tables tables) {
    return new RetentionTable(
        CsvTable.ofResource(FILE).stream().map(row -> read(row, tables)).toList());
  }

  private static Entry read(Row row, Tables tables) {
    return new Entry(
        row.optional("rule-set")
            .map(id -> row.known(id, "rule set", tables.ruleSets()::find, tables.ruleSets().ids())),
        new Retention(
            row.required("id"),
            row.required("what"),
            row.required("keep"),
            row.known(
                row.required("source"), "source", tables.sources()::find, tables.sources().ids())));
  }

  /** What is kept under a rule set. */
  public List<Retention> under(RuleSet ruleSet) {
    return entries.stream()
        .filter(one -> one.ruleSet().map(ruleSet::equals).orElse(true))
        .map(Entry::retention)
        .toList();
  }
}
