package org.brakerules.internal.vehicle;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.vehicle.Criterion.DefectiveShare;
import org.brakerules.internal.vehicle.Criterion.Measure;
import org.brakerules.internal.vehicle.Criterion.SteerAxleAlike;
import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Share;

/** The published criteria for whole vehicles. */
final class CriteriaTable {

  private static final String FILE = "/org/brakerules/work/criteria.csv";

  private CriteriaTable() {}

  /**
   * Reads the table of this artifact.
   *
   * @throws org.brakerules.internal.table.RuleBaseException if a row has a mistake
   */
  static List<Criterion> load(Tables tables) {
    return CsvTable.ofResource(FILE).stream().map(row -> read(row, tables)).toList();
  }

  private static Criterion read(Row row, Tables tables) {
    return new Criterion(
        row.required("id"),
        row.optional("rule-set")
            .map(id -> row.known(id, "rule set", tables.ruleSets()::find, tables.ruleSets().ids())),
        measure(row),
        row.required("title"),
        row.required("says"),
        row.required("ask"),
        row.known(
            row.required("source"), "source", tables.sources()::find, tables.sources().ids()));
  }

  private static Measure measure(Row row) {
    String about = row.required("about");
    return switch (about) {
      case "strokes" ->
          new DefectiveShare(
              Share.parse(row.required("share")),
              Length.parse(row.required("whole-from")),
              isYes(row, "halves"),
              isYes(row, "others"));
      case "steer-axle" ->
          new SteerAxleAlike(
              row.list("matters").stream()
                  .map(
                      name ->
                          row.known(
                              name,
                              "matter of an axle",
                              one -> Names.find(AxleMatter.class, one),
                              Names.all(AxleMatter.class)))
                  .collect(Collectors.toSet()));
      default ->
          throw row.mistake("\"" + about + "\" is nothing to count; write strokes or steer-axle");
    };
  }

  private static boolean isYes(Row row, String column) {
    String cell = row.required(column);
    if (!cell.equals("yes") && !cell.equals("no")) {
      throw row.mistake("\"" + cell + "\" in " + column + " says nothing; write yes or no");
    }
    return cell.equals("yes");
  }
}
