package org.brakerules.linter.internal.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.language.Attribute;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.reading.Station;

/** A row of a table of limits whose part, dates and selector can be read. */
public final class LimitRow {

  private final Row row;
  private final PartKind part;
  private final Selector selector;
  private final Period period;
  private final Map<String, Choice> choices = new LinkedHashMap<>();

  private LimitRow(Row row, PartKind part, Selector selector, Period period) {
    this.row = row;
    this.part = part;
    this.selector = selector;
    this.period = period;
    Map<String, Attribute> attributes = Attribute.of(part);
    for (Term term : selector.terms()) {
      Attribute attribute = attributes.get(term.attribute());
      if (attribute != null) {
        choices.merge(term.attribute(), Choice.of(attribute, term), Choice::and);
      }
    }
  }

  /** Takes a row apart; empty where a cell cannot be read, which is told for itself. */
  public static Optional<LimitRow> of(Row row) {
    Selector selector = Selector.read(row.text("applies-to"));
    return PartKind.byId(row.text("part"))
        .filter(kind -> isReadable(selector, Attribute.of(kind)))
        .flatMap(
            kind ->
                Period.read(row.text("from"), row.text("to"))
                    .filter(period -> !period.isBackwards())
                    .map(period -> new LimitRow(row, kind, selector, period)));
  }

  private static boolean isReadable(Selector selector, Map<String, Attribute> attributes) {
    return selector.terms().stream()
        .allMatch(
            term ->
                Optional.ofNullable(attributes.get(term.attribute()))
                    .filter(
                        attribute ->
                            term.values().stream()
                                .allMatch(value -> attribute.value(value).isPresent()))
                    .isPresent());
  }

  /** The rows of each limit, in the order of the tables. */
  public static List<List<LimitRow>> byLimit(Stream<Row> rows) {
    Map<String, List<LimitRow>> limits =
        rows.flatMap(row -> of(row).stream())
            .collect(
                Collectors.groupingBy(
                    one -> one.row().text("id"), LinkedHashMap::new, Collectors.toList()));
    return List.copyOf(limits.values());
  }

  /** The row as written. */
  public Row row() {
    return row;
  }

  /** The kind of part. */
  public PartKind part() {
    return part;
  }

  /** The days on which it holds. */
  public Period period() {
    return period;
  }

  /** The attributes that no part can have as this row demands. */
  public List<String> impossible() {
    return choices.entrySet().stream()
        .filter(entry -> entry.getValue().isEmpty())
        .map(Map.Entry::getKey)
        .toList();
  }

  /** What the row demands of an attribute, as written. */
  public List<String> demands(String attribute) {
    return selector.terms().stream()
        .filter(term -> term.attribute().equals(attribute))
        .map(Term::text)
        .toList();
  }

  /** Whether the row is for parts at this station of their kind. */
  public boolean admits(Station station) {
    return Optional.ofNullable(choices.get("part.station"))
        .map(choice -> choice.values().contains(station.id()))
        .orElse(true);
  }

  /** Whether one part, on one day, under one rule set, can be in both rows. */
  public boolean overlaps(LimitRow other) {
    return isSame(other, "property", "comparison", "station")
        && selector.otherwise() == other.selector.otherwise()
        && isUnderOneRuleSet(other)
        && period.overlaps(other.period)
        && sharesParts(other);
  }

  /** Whether it is for the same parts, rule set and readings as another row. */
  public boolean continues(LimitRow other) {
    return isSame(other, "property", "comparison", "station", "rule-set")
        && selector.otherwise() == other.selector.otherwise()
        && choices.equals(other.choices);
  }

  /** The first demand that another row makes and this one does not. */
  public Optional<Term> demandMissingHere(LimitRow other) {
    return other.selector.terms().stream()
        .filter(term -> !choices.containsKey(term.attribute()))
        .findFirst();
  }

  private boolean sharesParts(LimitRow other) {
    List<Choice> both = new ArrayList<>();
    both.addAll(choices.values());
    both.addAll(other.choices.values());
    choices.forEach(
        (attribute, choice) ->
            Optional.ofNullable(other.choices.get(attribute))
                .ifPresent(theirs -> both.add(choice.and(theirs))));
    return both.stream().noneMatch(Choice::isEmpty);
  }

  private boolean isUnderOneRuleSet(LimitRow other) {
    String mine = row.text("rule-set");
    String theirs = other.row.text("rule-set");
    return mine.isEmpty() || theirs.isEmpty() || mine.equals(theirs);
  }

  private boolean isSame(LimitRow other, String... columns) {
    return Stream.of(columns).allMatch(column -> row.text(column).equals(other.row.text(column)));
  }
}
