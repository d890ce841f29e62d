package org.brakerules.internal.work;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.work.PartCondition.Wanted;
import org.brakerules.internal.work.StepRow.LimitCell;
import org.brakerules.internal.work.StepRow.RecordCell;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.Source;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;
import org.brakerules.work.Surface;

/**
 * Reads the cells of a row of steps that speak of something else: steps, parts, limits, sources.
 */
final class StepCells {

  private static final Pattern RULE = Pattern.compile("[A-Z]+(-[A-Z]+)*-[0-9]{3}");
  private static final Pattern SEVERAL = Pattern.compile("(.*) x([1-9][0-9]?)");
  private static final Pattern EXPLAINED = Pattern.compile("(\\S+) \\((.+)\\)");
  private static final String WITH = "with ";
  private static final Set<String> OF_THE_MAKER = Set.of("torque", "makers-figure");
  private static final String BY_RULE = "replace ";
  private static final String ANY = "any";

  private final Row row;
  private final Tables tables;
  private final Collection<String> above;

  /** Reads the cells of a row, which may only speak of steps that stand above it. */
  StepCells(Row row, Tables tables, Collection<String> above) {
    this.row = row;
    this.tables = tables;
    this.above = above;
  }

  List<String> steps(String column) {
    return row.list(column).stream().map(id -> step(id)).distinct().toList();
  }

  private String step(String id) {
    return row.known(
        id, "step above this one", one -> Optional.of(one).filter(above::contains), above);
  }

  Trigger trigger(String cell) {
    if (cell.startsWith(WITH)) {
      String step = step(cell.substring(WITH.length()));
      return new Trigger(Trigger.Kind.WITH_STEP, Optional.empty(), step);
    }
    Optional<Scope> scope = Names.find(Scope.class, cell);
    return scope.isPresent()
        ? new Trigger(Trigger.Kind.FROM_SCOPE, scope, "")
        : Trigger.of(named(cell, "when", Trigger.Kind.class));
  }

  PartCondition condition(String cell) {
    String[] sides = cell.split(":", -1);
    if (sides.length != 2) {
      throw row.mistake("\"" + cell + "\" names no part; write drum: adjust");
    }
    String kind = sides[0].strip();
    String wanted = sides[1].strip();
    Optional<PartKind> of = kind.equals(ANY) ? Optional.empty() : Optional.of(kind(kind));
    if (RULE.matcher(wanted).matches()) {
      return new PartCondition(of, Wanted.RULE, wanted);
    }
    if (wanted.startsWith(BY_RULE) && RULE.matcher(wanted.substring(BY_RULE.length())).matches()) {
      return new PartCondition(of, Wanted.REPLACED_BY, wanted.substring(BY_RULE.length()));
    }
    List<String> known = List.of("replace", "adjust", "clean", "undecided", "new", "fitted");
    return new PartCondition(
        of, row.known(wanted, "thing that can be of a part", PartCondition::wanted, known), "");
  }

  List<PartKind> kinds(String column) {
    return row.list(column).stream().map(this::kind).toList();
  }

  private PartKind kind(String name) {
    return row.known(name, "kind of part", PartKind::byId, Names.all(PartKind.class));
  }

  List<Surface> surfaces(String column, boolean dry) {
    List<Surface> surfaces =
        row.list(column).stream().map(name -> named(name, "surface", Surface.class)).toList();
    for (Surface surface : surfaces) {
      if (surface.isDry() != dry) {
        throw row.mistake(
            "the " + surface.inWords() + (dry ? " is greased" : " stays dry") + "; take it out");
      }
    }
    return surfaces;
  }

  Caution caution(String id) {
    return row.known(id, "caution", tables.cautions()::find, tables.cautions().ids());
  }

  RecordCell recordCell(String cell) {
    String[] sides = cell.split("=", -1);
    Matcher several = SEVERAL.matcher(sides[0].strip());
    String what = several.matches() ? several.group(1) : sides[0].strip();
    int readings = several.matches() ? Integer.parseInt(several.group(2)) : 1;
    if (sides.length == 1) {
      return new RecordCell(what, readings, List.of(), false);
    }
    if (OF_THE_MAKER.contains(sides[1].strip())) {
      return new RecordCell(what, readings, List.of(), true);
    }
    List<LimitCell> limits =
        Arrays.stream(sides[1].split("\\|")).map(String::strip).map(this::limit).toList();
    return new RecordCell(what, readings, limits, false);
  }

  /** A limit, and in brackets what a reading on its wrong side means, where that needs a word. */
  private LimitCell limit(String cell) {
    Collection<String> ids = tables.limits().ids();
    Matcher explained = EXPLAINED.matcher(cell);
    boolean told = explained.matches();
    return new LimitCell(
        row.known(
            told ? explained.group(1) : cell,
            "limit",
            one -> Optional.of(one).filter(ids::contains),
            ids),
        told ? explained.group(2) : "");
  }

  String point(String id) {
    Collection<String> ids = tables.points().ids();
    return row.known(id, "inspection point", one -> Optional.of(one).filter(ids::contains), ids);
  }

  Source source(String citation) {
    return LimitTable.source(row, citation, tables.sources());
  }

  <E extends Enum<E>> E named(String name, String what, Class<E> type) {
    return row.known(name, what, one -> Names.find(type, one), Names.all(type));
  }
}
