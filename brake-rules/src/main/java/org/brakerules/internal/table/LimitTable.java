package org.brakerules.internal.table;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Source;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.QuantityFormatException;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Station;
import org.jspecify.annotations.Nullable;

/** All limits of the rule base. */
public final class LimitTable {

  private final Map<String, List<LimitRow>> byId = new LinkedHashMap<>();
  private final Map<PartKind, List<String>> idsByKind;
  private final Map<PartKind, Map<String, List<Limit>>> byProperty;
  private final Map<PartKind, Map<String, List<Method>>> methods;
  private final Map<String, List<RuleSet>> laws;
  private final List<LocalDate> turns;
  private final Map<Span, LimitsOfDay> bySpan = new ConcurrentHashMap<>();

  /**
   * Days between which no limit comes into force or goes out.
   *
   * @param number the number of turns up to and on them
   * @param ruleSet the rule set under which they are
   */
  private record Span(int number, RuleSet ruleSet) {

    /** Written out, as is its hash: what Java makes for a record is put together at first use. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Span that && number == that.number && ruleSet.equals(that.ruleSet);
    }

    @Override
    public int hashCode() {
      return 31 * number + ruleSet.hashCode();
    }
  }

  LimitTable(List<Row> rows, List<Row> comparisons, SourceTable sources, RuleSetTable ruleSets) {
    List<LimitRow> written = rows.stream().map(row -> read(row, sources, ruleSets)).toList();
    for (LimitRow row : new ComparisonTable(comparisons, sources, ruleSets).apply(written)) {
      byId.computeIfAbsent(row.limit().id(), id -> new ArrayList<>()).add(row);
    }
    idsByKind =
        byId.entrySet().stream()
            .collect(
                Collectors.groupingBy(
                    entry -> entry.getValue().get(0).limit().part(),
                    Collectors.mapping(Map.Entry::getKey, Collectors.toUnmodifiableList())));
    byProperty =
        rows()
            .map(LimitRow::limit)
            .collect(Collectors.groupingBy(Limit::part, Collectors.groupingBy(Limit::property)));
    methods =
        rows()
            .map(LimitRow::limit)
            .collect(
                Collectors.groupingBy(
                    Limit::part,
                    Collectors.groupingBy(
                        Limit::property,
                        Collectors.collectingAndThen(Collectors.toList(), LimitTable::methods))));
    laws =
        byId.entrySet().stream()
            .collect(
                Collectors.toUnmodifiableMap(Map.Entry::getKey, entry -> laws(entry.getValue())));
    turns = rows().map(LimitRow::limit).flatMap(LimitTable::turns).distinct().sorted().toList();
  }

  private static List<Method> methods(List<Limit> limits) {
    return limits.stream().flatMap(limit -> limit.methods().stream()).distinct().sorted().toList();
  }

  private static List<RuleSet> laws(List<LimitRow> rows) {
    return rows.stream().flatMap(row -> row.law().stream()).distinct().toList();
  }

  private static Stream<LocalDate> turns(Limit limit) {
    return Stream.concat(limit.from().stream(), limit.to().map(last -> last.plusDays(1)).stream());
  }

  /** The limits that hold on a day under a rule set. All days without a turn between share them. */
  public LimitsOfDay on(LocalDate date, RuleSet ruleSet) {
    int found = Collections.binarySearch(turns, date);
    int number = found < 0 ? -found - 1 : found + 1;
    return bySpan.computeIfAbsent(
        new Span(number, ruleSet), span -> new LimitsOfDay(this, date, ruleSet));
  }

  /** The methods that the limits of one measurement of one kind of part accept. */
  public List<Method> methods(PartKind kind, String property) {
    return methods.getOrDefault(kind, Map.of()).getOrDefault(property, List.of());
  }

  /** The ids of all limits. */
  public Collection<String> ids() {
    return byId.keySet();
  }

  /** All rows of one limit. */
  public List<LimitRow> rows(String id) {
    return byId.getOrDefault(id, List.of());
  }

  /** Whether any row of a limit is a law of a rule set. */
  public boolean isLawOf(String id, RuleSet ruleSet) {
    return laws.getOrDefault(id, List.of()).contains(ruleSet);
  }

  /** All rows. */
  public Stream<LimitRow> rows() {
    return byId.values().stream().flatMap(List::stream);
  }

  /** The ids of the limits of one kind of part. */
  public List<String> idsFor(PartKind kind) {
    return idsByKind.getOrDefault(kind, List.of());
  }

  /** The limits of one measurement of one kind of part. */
  public List<Limit> of(PartKind kind, String property) {
    return byProperty.getOrDefault(kind, Map.of()).getOrDefault(property, List.of());
  }

  private static LimitRow read(Row row, SourceTable sources, RuleSetTable ruleSets) {
    PartKind kind =
        row.known(row.required("part"), "kind of part", PartKind::byId, Names.all(PartKind.class));
    Property property =
        row.known(
            row.required("property"),
            "measurement of a " + kind.inWords(),
            name -> Property.of(kind, name).filter(Property::isMeasurement),
            Property.names(kind.recordType()));
    Limit limit =
        new Limit(
            row.required("id"),
            kind,
            property.name(),
            comparison(row),
            value(row, property),
            row.text("value"),
            row.optional("station").map(name -> station(row, name)),
            row.list("methods").stream().map(name -> method(row, name)).toList(),
            row.optional("moment").map(name -> moment(row, name)),
            row.text("applies-to"),
            row.optional("rule-set").map(name -> ruleSet(row, name, ruleSets)),
            List.of(),
            row.date("from"),
            row.date("to"),
            source(row, row.required("source"), sources),
            row.text("note"));
    return new LimitRow(
        limit,
        Selector.parse(row, "applies-to", kind),
        property,
        RatedShare.parse(limit.written()),
        sources.lawOf(limit.source()),
        false);
  }

  static Comparison comparison(Row row) {
    return row.known(
        row.required("comparison"),
        "comparison",
        words ->
            Arrays.stream(Comparison.values())
                .filter(one -> one.inWords().equals(words))
                .findFirst(),
        Arrays.stream(Comparison.values()).map(Comparison::inWords).toList());
  }

  /** Empty where the table knows no default, and where the value is a share of the rated stroke. */
  private static Optional<Quantity<?>> value(Row row, Property property) {
    return row.optional("value")
        .filter(cell -> RatedShare.parse(cell).isEmpty())
        .map(cell -> value(row, cell, property));
  }

  private static Quantity<?> value(Row row, String cell, Property property) {
    try {
      Quantity<?> value = Quantities.parse(cell);
      if (!property.measures(value)) {
        throw row.mistake("\"" + value + "\" is no value of " + property.name());
      }
      return value;
    } catch (QuantityFormatException e) {
      throw row.mistake("\"" + e.found() + "\" is no value; write " + e.expected());
    }
  }

  private static Station station(Row row, String name) {
    return row.known(name, "station", Station::byId, Names.all(Station.class));
  }

  private static Method method(Row row, String name) {
    return row.known(name, "method", Method::byId, Names.all(Method.class));
  }

  private static Moment moment(Row row, String name) {
    return row.known(name, "moment", one -> Names.find(Moment.class, one), Names.all(Moment.class));
  }

  static RuleSet ruleSet(Row row, String name, RuleSetTable ruleSets) {
    return row.known(name, "rule set", ruleSets::find, ruleSets.ids());
  }

  /**
   * The source that a cell of a row cites.
   *
   * @throws RuleBaseException if there is no such source
   */
  public static Source source(Row row, String citation, SourceTable sources) {
    return row.known(citation, "source", sources::find, sources.ids());
  }

  /** The comparison and kind of quantity of a limit, for a maker's value of the same. */
  public Optional<Limit> first(String id) {
    List<LimitRow> rows = rows(id);
    return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(0).limit());
  }
}
