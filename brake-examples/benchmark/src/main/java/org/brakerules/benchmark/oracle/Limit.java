package org.brakerules.benchmark.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.model.part.PartKind;

/**
 * One limit of a kind of part, with all its rows of figures.
 *
 * @param number where it stands among the limits of its kind
 * @param property the property it limits, by its number in {@link Knowable}
 */
record Limit(PartKind part, int number, String id, int property, List<Figure> rows) {

  /** The limits of one kind of part from their rows. */
  static List<Limit> of(PartKind part, List<Figure> rows) {
    Map<String, List<Figure>> byId = new LinkedHashMap<>();
    rows.stream()
        .filter(row -> row.part() == part)
        .forEach(row -> byId.computeIfAbsent(row.id(), id -> new ArrayList<>()).add(row));
    List<Limit> limits = new ArrayList<>();
    byId.forEach(
        (id, ofLimit) ->
            limits.add(
                new Limit(
                    part,
                    limits.size(),
                    id,
                    Knowable.of(part).number(ofLimit.get(0).property()),
                    List.copyOf(ofLimit))));
    return List.copyOf(limits);
  }
}
