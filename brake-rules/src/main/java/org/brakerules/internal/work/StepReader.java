package org.brakerules.internal.work;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.Selector;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.work.StepRow.Tells;
import org.brakerules.internal.work.StepRow.Unstated;
import org.brakerules.model.part.PartKind;
import org.brakerules.work.WorkLevel;
import org.brakerules.work.WorkPhase;
import org.brakerules.work.WorkStep.Air;

/** Reads one row of the table of steps. */
final class StepReader {

  private static final Pattern ID = Pattern.compile("[A-Z]+-[0-9]{3}");

  private final Row row;
  private final StepCells cells;

  /** Reads a row, which may only speak of steps that stand above it. */
  StepReader(Row row, Tables tables, Collection<String> above) {
    this.row = row;
    this.cells = new StepCells(row, tables, above);
  }

  /**
   * Reads the row.
   *
   * @param rank its place in the table
   */
  StepRow read(int rank) {
    String id = id();
    boolean hold = yesOrNo("hold");
    List<PartCondition> forParts = row.list("for-parts").stream().map(cells::condition).toList();
    List<PartKind> fits = cells.kinds("fits");
    return new StepRow(
        id,
        rank,
        constant("level", WorkLevel.class),
        phase(id),
        row.required("text"),
        hold,
        passesWhen(hold),
        cells.steps("needs"),
        row.text("applies-to"),
        Selector.parse(row, "applies-to", asked(forParts, fits)),
        row.text("applies-to").contains("part."),
        row.text("unstated").isEmpty() ? Unstated.ASK : constant("unstated", Unstated.class),
        row.list("when").stream().map(cells::trigger).toList(),
        forParts,
        row.list("unless").stream().map(cells::condition).toList(),
        fits,
        cells.steps("calls-for"),
        cells.surfaces("greases", false),
        cells.surfaces("keeps-dry", true),
        cells.kinds("disturbs"),
        row.list("cautions").stream().map(cells::caution).toList(),
        row.list("records").stream().map(cells::recordCell).toList(),
        row.list("answers").stream().map(cells::point).toList(),
        row.list("tells").stream().map(name -> cells.named(name, "tells", Tells.class)).toList(),
        row.text("air").isEmpty() ? Air.ANY : constant("air", Air.class),
        row.list("stops-for"),
        row.list("source").stream().map(cells::source).toList());
  }

  private String id() {
    String id = row.required("id");
    if (!ID.matcher(id).matches()) {
      throw row.mistake(
          "\"" + id + "\" is no id of a step; write a phase and three digits: TEARDOWN-030");
    }
    return id;
  }

  private WorkPhase phase(String id) {
    String name = id.substring(0, id.indexOf('-')).toLowerCase(Locale.ROOT);
    return cells.named(name, "phase", WorkPhase.class);
  }

  private boolean yesOrNo(String column) {
    return row.known(
            row.required(column),
            column,
            cell -> Optional.of(cell).filter(List.of("yes", "no")::contains),
            List.of("yes", "no"))
        .equals("yes");
  }

  private String passesWhen(boolean hold) {
    String passes = row.text("passes-when");
    if (hold == passes.isEmpty()) {
      throw row.mistake("a hold point, and nothing else, says in \"passes-when\" when it passes");
    }
    return passes;
  }

  /** A selector that asks for something of a part asks the first kind that the row names. */
  private static PartKind asked(List<PartCondition> forParts, List<PartKind> fits) {
    return Stream.concat(
            fits.stream(), forParts.stream().flatMap(condition -> condition.kind().stream()))
        .findFirst()
        .orElse(PartKind.CAMSHAFT);
  }

  private <E extends Enum<E>> E constant(String column, Class<E> type) {
    return cells.named(row.required(column), column, type);
  }
}
