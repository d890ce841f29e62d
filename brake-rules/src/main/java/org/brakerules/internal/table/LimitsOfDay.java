package org.brakerules.internal.table;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.model.job.RuleSet;

/** The rows of every limit that hold on a day under a rule set. */
public final class LimitsOfDay {

  /**
   * The rows of one limit.
   *
   * @param all all of them
   * @param named those for parts that they name
   * @param otherwise those for every part that none of the others is for
   */
  private record Rows(List<LimitRow> all, List<LimitRow> named, List<LimitRow> otherwise) {

    static final Rows NONE = new Rows(List.of(), List.of(), List.of());

    static Rows of(List<LimitRow> all) {
      return new Rows(
          all,
          all.stream().filter(row -> !row.selector().isOtherwise()).toList(),
          all.stream().filter(row -> row.selector().isOtherwise()).toList());
    }
  }

  private final Map<String, Rows> byId = new HashMap<>();

  LimitsOfDay(LimitTable table, LocalDate date, RuleSet ruleSet) {
    for (String id : table.ids()) {
      byId.put(
          id,
          Rows.of(
              table.rows(id).stream().filter(row -> row.limit().holds(date, ruleSet)).toList()));
    }
  }

  /** The rows of a limit, for whatever part. */
  public List<LimitRow> all(String id) {
    return of(id).all();
  }

  /** The rows of a limit that may be for a part. */
  public List<LimitRow> rows(String id, Subject subject) {
    List<LimitRow> fitting = List.of();
    List<LimitRow> named = of(id).named();
    for (int i = 0; i < named.size(); i++) {
      LimitRow row = named.get(i);
      if (row.selector().fit(subject) != Fit.NO) {
        fitting = and(fitting, row);
      }
    }
    return fitting.isEmpty() ? of(id).otherwise() : fitting;
  }

  /** The rows of a limit that are for a part, whatever is not stated of it. */
  public List<LimitRow> surely(String id, Subject subject) {
    List<LimitRow> fitting = List.of();
    boolean any = false;
    List<LimitRow> named = of(id).named();
    for (int i = 0; i < named.size(); i++) {
      LimitRow row = named.get(i);
      Fit fit = row.selector().fit(subject);
      any |= fit != Fit.NO;
      if (fit == Fit.YES) {
        fitting = and(fitting, row);
      }
    }
    return any ? fitting : of(id).otherwise();
  }

  /** Most limits have one row for a part, or none. */
  private static List<LimitRow> and(List<LimitRow> rows, LimitRow row) {
    if (rows.isEmpty()) {
      return List.of(row);
    }
    List<LimitRow> more = new ArrayList<>(rows);
    more.add(row);
    return more;
  }

  private Rows of(String id) {
    return byId.getOrDefault(id, Rows.NONE);
  }
}
