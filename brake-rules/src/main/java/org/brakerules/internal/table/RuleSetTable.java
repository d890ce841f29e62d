package org.brakerules.internal.table;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.quantity.Pressure;

/** The rule sets a job may name, with what each says of a whole vehicle. */
public final class RuleSetTable {

  /**
   * One rule set.
   *
   * @param title its title
   * @param testPressure the reservoir pressure for applied strokes; empty if it names none
   * @param automaticAdjustersFrom the first day on which a vehicle was built that must have
   *     automatic adjusters; empty if it asks for none
   */
  private record Entry(
      String title,
      Optional<TestPressure> testPressure,
      Optional<LocalDate> automaticAdjustersFrom) {}

  private final Map<String, Entry> entries = new LinkedHashMap<>();

  RuleSetTable(Iterable<Row> rows) {
    for (Row row : rows) {
      entries.put(
          row.required("id"),
          new Entry(
              row.required("title"), testPressure(row), row.date("automatic-adjusters-from")));
    }
  }

  private static Optional<TestPressure> testPressure(Row row) {
    return row.optional("test-pressure-least")
        .map(
            least ->
                new TestPressure(
                    Pressure.parse(least), Pressure.parse(row.required("test-pressure-most"))));
  }

  /** The ids of all rule sets. */
  public Collection<String> ids() {
    return entries.keySet();
  }

  /** The titles by id. */
  public Map<String, String> titles() {
    return entries.entrySet().stream()
        .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, one -> one.getValue().title()));
  }

  /** Finds a rule set by its id. */
  public Optional<RuleSet> find(String id) {
    return entries.containsKey(id) ? Optional.of(new RuleSet(id)) : Optional.empty();
  }

  /**
   * The reservoir pressure at which a rule set wants applied strokes read; empty if any will do.
   */
  public Optional<TestPressure> testPressure(RuleSet ruleSet) {
    return entry(ruleSet).flatMap(Entry::testPressure);
  }

  /** From which day of building a vehicle must have automatic adjusters; empty if never. */
  public Optional<LocalDate> automaticAdjustersFrom(RuleSet ruleSet) {
    return entry(ruleSet).flatMap(Entry::automaticAdjustersFrom);
  }

  private Optional<Entry> entry(RuleSet ruleSet) {
    return Optional.ofNullable(entries.get(ruleSet.id()));
  }
}
