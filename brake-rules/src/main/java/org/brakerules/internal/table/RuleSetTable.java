package org.brakerules.internal.table;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.brakerules.model.job.RuleSet;

/** The rule sets a job may name. */
public final class RuleSetTable {

  private final Map<String, String> titles = new LinkedHashMap<>();

  RuleSetTable(Iterable<Row> rows) {
    for (Row row : rows) {
      titles.put(row.required("id"), row.required("title"));
    }
  }

  /** The ids of all rule sets. */
  public Collection<String> ids() {
    return titles.keySet();
  }

  /** The titles by id. */
  public Map<String, String> titles() {
    return Map.copyOf(titles);
  }

  /** Finds a rule set by its id. */
  public Optional<RuleSet> find(String id) {
    return titles.containsKey(id) ? Optional.of(new RuleSet(id)) : Optional.empty();
  }
}
