package org.brakerules.benchmark.oracle;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;

/**
 * Something the decision on a part needs to know.
 *
 * <p>A table has a row {@code shoes-off | always | part.condition=as-found | crack flat} for the
 * properties that are needed from the same scope on and of the same parts.
 *
 * @param part the kind of part
 * @param number the property, by its number in {@link Knowable}
 * @param measured whether it is measured
 * @param id the id
 */
record Point(
    PartKind part, int number, boolean measured, String id, Scope from, When when, Which which) {

  /** When a point is needed, once its scope is reached. */
  enum When {
    ALWAYS,
    WITH_LIMIT,
    ON_DEMAND
  }

  static List<Point> read(PartKind part, String table) {
    return table.lines().filter(line -> !line.isBlank()).flatMap(row -> row(part, row)).toList();
  }

  private static Stream<Point> row(PartKind part, String row) {
    List<String> cells = Arrays.stream(row.split("\\|", -1)).map(String::strip).toList();
    Scope from = Scope.valueOf(BrakeState.constant(cells.get(0)));
    When when = When.valueOf(BrakeState.constant(cells.get(1)));
    Which which = Which.read(part, cells.get(2));
    Knowable knowable = Knowable.of(part);
    return Arrays.stream(cells.get(3).split("\\s+", -1))
        .map(knowable::number)
        .map(
            number ->
                new Point(
                    part,
                    number,
                    knowable.isMeasured(number),
                    knowable.id(number),
                    from,
                    when,
                    which));
  }

  long bit() {
    return 1L << number;
  }
}
