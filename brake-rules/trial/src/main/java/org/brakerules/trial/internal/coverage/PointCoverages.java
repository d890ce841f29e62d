package org.brakerules.trial.internal.coverage;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.trial.coverage.PointCoverage;

/** Who reads each inspection point. */
public final class PointCoverages {

  private final Tables tables;
  private final List<RuleText> rules;
  private final RowNames names;
  private final Map<String, List<String>> askedBy;

  private PointCoverages(Tables tables, List<RuleText> rules, List<WrittenRule> written) {
    this.tables = tables;
    this.rules = rules;
    this.names = new RowNames(tables.limits());
    this.askedBy =
        written.stream()
            .filter(rule -> rule.action().point().isPresent())
            .collect(
                Collectors.groupingBy(
                    rule -> rule.action().point().orElseThrow(),
                    Collectors.mapping(WrittenRule::id, Collectors.toList())));
  }

  /** The readers of each point, in the order of the tables. */
  public static List<PointCoverage> of(
      Tables tables, List<RuleText> rules, List<WrittenRule> written) {
    PointCoverages coverages = new PointCoverages(tables, rules, written);
    return tables.points().points().stream().map(coverages::of).toList();
  }

  private PointCoverage of(Point point) {
    String read = name(point);
    return new PointCoverage(
        point.id(),
        point.part().id(),
        rules.stream().filter(rule -> rule.reads().contains(read)).map(RuleText::id).toList(),
        tables.limits().rows().filter(row -> reads(row, point)).map(names::of).distinct().toList(),
        askedBy.getOrDefault(point.id(), List.of()),
        needed(point));
  }

  /** As rules name it, whatever the id of the point. */
  private static String name(Point point) {
    String of = point.ofPart() ? point.part().id() : Names.of(point.owner());
    return of + "." + point.property().idName();
  }

  /** A limit reads what it is held against, and what chooses between its rows. */
  private static boolean reads(LimitRow row, Point point) {
    Limit limit = row.limit();
    boolean sameKind = limit.part() == point.part();
    if (point.ofPart() && sameKind && limit.property().equals(point.property().name())) {
      return true;
    }
    String attribute = (point.ofPart() ? "part." : "layout.") + point.property().name();
    boolean isChosenBy =
        Arrays.stream(limit.appliesTo().split(";"))
            .map(term -> term.split("=", -1)[0].strip())
            .anyMatch(term -> term.equals(attribute) || term.startsWith(attribute + "."));
    return isChosenBy && (sameKind || !point.ofPart());
  }

  private static String needed(Point point) {
    String from = ", from scope " + Names.of(point.from());
    return switch (point.demand()) {
      case ALWAYS -> "always" + from;
      case WITH_LIMIT -> "where a limit is in force" + from;
      case ON_DEMAND -> "only when a rule asks for it" + from;
    };
  }
}
