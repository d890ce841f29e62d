package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;

/** The steps of the work, and how far a brake is taken apart to replace a part of it. */
public final class StepTable {

  private static final String STEPS = "/org/brakerules/work/steps.csv";
  private static final String DEPTHS = "/org/brakerules/work/depths.csv";

  private final Map<String, StepRow> byId = new LinkedHashMap<>();
  private final HoldSources holdSources;
  private final WaysOut waysOut;
  private final Map<PartKind, Scope> depths = new EnumMap<>(PartKind.class);

  private StepTable(List<Row> steps, List<Row> depthRows, Tables tables) {
    for (Row row : steps) {
      StepRow step = new StepReader(row, tables, byId.keySet()).read(byId.size());
      if (byId.put(step.id(), step) != null) {
        throw row.mistake("step \"" + step.id() + "\" is there twice");
      }
    }
    depthRows.forEach(row -> readDepth(row, tables));
    holdSources = HoldSources.load(tables);
    waysOut = WaysOut.load(tables);
  }

  /**
   * Reads the tables that travel in this artifact.
   *
   * @throws RuleBaseException if one has a mistake
   */
  public static StepTable load(Tables tables) {
    return of(CsvTable.ofResource(STEPS), CsvTable.ofResource(DEPTHS), tables);
  }

  /**
   * Reads other tables of the same kind.
   *
   * @throws RuleBaseException if one has a mistake
   */
  static StepTable of(List<Row> steps, List<Row> depths, Tables tables) {
    return new StepTable(steps, depths, tables);
  }

  /** The ids of all steps. */
  public Collection<String> ids() {
    return byId.keySet();
  }

  Collection<StepRow> rows() {
    return byId.values();
  }

  /** Which findings may be the source that a hold waits for. */
  HoldSources holdSources() {
    return holdSources;
  }

  /** What is done first about a hold. */
  WaysOut waysOut() {
    return waysOut;
  }

  Optional<StepRow> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** The scope from which on a part of this kind can be replaced. */
  Scope depth(PartKind kind) {
    Scope depth = depths.get(kind);
    if (depth == null) {
      throw new RuleBaseException(
          "depths.csv has no row for " + kind.id() + "; say from which scope on it is replaced.");
    }
    return depth;
  }

  /** Whether work that goes as far as a scope has a step that puts a kind of part in. */
  boolean putsIn(PartKind kind, Scope scope) {
    return byId.values().stream()
        .filter(row -> row.fits().contains(kind))
        .flatMap(row -> row.triggers().stream())
        .flatMap(trigger -> trigger.scope().stream())
        .anyMatch(scope::reaches);
  }

  /** The step at which the hold of a rule stops work. */
  StepRow stopFor(String rule) {
    List<StepRow> stops = new ArrayList<>();
    byId.values().stream().filter(row -> row.stopsFor().contains(rule)).forEach(stops::add);
    return stops.isEmpty() ? otherwise() : stops.get(0);
  }

  /** The step at which every other hold stops work. */
  StepRow otherwise() {
    return byId.values().stream()
        .filter(row -> row.stopsFor().contains(StepRow.OTHERWISE))
        .findFirst()
        .orElseThrow(() -> new RuleBaseException("steps.csv: no step stops for any other hold."));
  }

  private void readDepth(Row row, Tables tables) {
    PartKind kind =
        row.known(row.required("part"), "kind of part", PartKind::byId, Names.all(PartKind.class));
    Scope scope =
        row.known(
            row.required("replaced-from"),
            "scope",
            name -> Names.find(Scope.class, name),
            Names.all(Scope.class));
    LimitTable.source(row, row.required("source"), tables.sources());
    if (depths.put(kind, scope) != null) {
      throw row.mistake("part \"" + kind.id() + "\" is there twice");
    }
  }
}
