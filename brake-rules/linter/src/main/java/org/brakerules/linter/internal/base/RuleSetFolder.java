package org.brakerules.linter.internal.base;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folder of one rule set.
 *
 * @param id its name, which is the id of the rule set
 * @param itself what it says of a whole vehicle, in one row
 * @param limits the limits that hold under it alone; empty if it has no such table
 * @param comparisons the limits it holds on another side; empty if it has no such table
 * @param rulesOff the rules that do not speak under it; empty if it has no such table
 * @param otherFiles files that nobody reads
 */
public record RuleSetFolder(
    String id,
    Table itself,
    Optional<Table> limits,
    Optional<Table> comparisons,
    Optional<Table> rulesOff,
    List<String> otherFiles) {

  private static final String RULE_SET = "rule-set";

  /** Keeps its own copy. */
  public RuleSetFolder {
    otherFiles = List.copyOf(otherFiles);
  }

  Stream<Table> tables() {
    return Stream.concat(
        Stream.of(itself), Stream.of(limits, comparisons, rulesOff).flatMap(Optional::stream));
  }

  /** Its rows of limits, each with its id as if it stood in the table of a component. */
  Stream<Row> limitRows() {
    return limits.stream().flatMap(table -> table.rows().stream()).map(this::withId);
  }

  /** Its rows of comparisons. */
  public Stream<Row> comparisonRows() {
    return comparisons.stream().flatMap(table -> table.soundRows().stream());
  }

  /** Its rows of rules that do not speak. */
  public Stream<Row> rulesOffRows() {
    return rulesOff.stream().flatMap(table -> table.soundRows().stream());
  }

  private Row withId(Row row) {
    Map<String, Cell> cells = new LinkedHashMap<>(row.cells());
    cells.put(RULE_SET, new Cell(id, row.spot()));
    return new Row(row.spot(), cells);
  }
}
