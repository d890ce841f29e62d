package org.brakerules.harness.batch;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.LimitInForce;

/**
 * A short name for every limit of the tables: its id with a number behind it, since one id has
 * several values by day, rule set and configuration.
 */
final class LimitNames {

  /**
   * What two rows of a table have in common if no answer tells them apart.
   *
   * @param id the id of the limit
   * @param comparison the side on which a reading passes
   * @param written the value as the table writes it
   * @param source the id of its source
   * @param clause the clause of its source
   */
  record Value(String id, Comparison comparison, String written, String source, String clause) {

    /** Where it comes from, as rule files cite it. */
    String citation() {
      return clause.isEmpty() ? source : source + "#" + clause;
    }
  }

  private final Map<Value, String> names = new LinkedHashMap<>();

  LimitNames(List<Limit> rows) {
    Map<String, Integer> numbers = new HashMap<>();
    for (Limit row : rows) {
      Value value =
          new Value(
              row.id(), row.comparison(), row.written(), row.source().id(), row.source().clause());
      if (!names.containsKey(value)) {
        names.put(value, row.id() + "/" + numbers.merge(row.id(), 1, Integer::sum));
      }
    }
  }

  /** The name of a limit; empty if no table has it, such as one that its maker stated. */
  Optional<String> name(LimitInForce limit) {
    return Optional.ofNullable(names.get(valueOf(limit)));
  }

  private static Value valueOf(LimitInForce limit) {
    return new Value(
        limit.id(),
        limit.comparison(),
        limit.written(),
        limit.source().id(),
        limit.source().clause());
  }

  /** Every value with its name, in the order of the tables. */
  Map<Value, String> all() {
    return names;
  }
}
