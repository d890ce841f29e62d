package org.brakerules.benchmark.oracle;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.part.Place;
import org.brakerules.model.quantity.Quantity;

/** Holds the readings of the parts of a job against the figures in force. */
final class Measure {

  private static final Map<String, List<Figure>> FIGURES =
      Trade.FIGURES.stream().collect(Collectors.groupingBy(Figure::id));

  private record Question(String limit, Place part) {}

  private final BrakeJob job;
  private final Map<Question, List<Held>> known = new HashMap<>();

  Measure(BrakeJob job) {
    this.job = job;
  }

  /** The ids of all limits on a property of a part. */
  static List<String> limits(Facts part, String property) {
    return limits(part)
        .filter(figure -> figure.property().equals(property))
        .map(Figure::id)
        .distinct()
        .toList();
  }

  /** The ids of all limits on a part. */
  static List<String> limitsOf(Facts part) {
    return limits(part).map(Figure::id).distinct().toList();
  }

  private static Stream<Figure> limits(Facts part) {
    return Trade.FIGURES.stream().filter(figure -> figure.part() == part.kind());
  }

  private static List<Figure> rows(String limit) {
    return FIGURES.getOrDefault(limit, List.of());
  }

  /** Whether the rule set of the job has such a limit, or the job brings the maker's for a part. */
  boolean isInForce(String limit, Facts part) {
    return rows(limit).stream().anyMatch(row -> row.holds(job)) || makers(limit, part).isPresent();
  }

  Held against(String limit, WheelEndView end, Facts part) {
    return answers(limit, end, part).stream().reduce(Held.NO_LIMIT, Held::worse);
  }

  /** Something that counts is not measured, not proven or not stated. */
  boolean isOpen(String limit, WheelEndView end, Facts part) {
    return answers(limit, end, part).contains(Held.OPEN);
  }

  /** A limit is known, and the readings prove on which side of it they are. */
  boolean isSettled(String limit, WheelEndView end, Facts part) {
    return answers(limit, end, part).stream()
        .allMatch(held -> held == Held.WITHIN || held == Held.BEYOND);
  }

  private List<Held> answers(String limit, WheelEndView end, Facts part) {
    return known.computeIfAbsent(
        new Question(limit, part.place()), asked -> answer(limit, end, part));
  }

  /** Against the maker's limit where there is one, and the law's which no maker can displace. */
  private List<Held> answer(String limit, WheelEndView end, Facts part) {
    List<Figure> rows =
        rows(limit).stream().filter(row -> row.holds(job)).map(row -> row.under(job)).toList();
    Optional<Figure> fitting = fitting(rows, end, part);
    Figure likely = fitting.or(() -> rows.stream().findFirst()).orElse(rows(limit).get(0));
    Optional<MakersLimit> makers = makers(limit, part);
    if (makers.isEmpty()) {
      return List.of(byRow(rows, fitting, end, part));
    }
    Held byMaker = new Bound(likely, makers.get().value()).hold(job, part);
    Held byLaw =
        byRow(
            rows.stream().filter(row -> row.isLawOf(job)).toList(),
            fitting.filter(row -> row.isLawOf(job)),
            end,
            part);
    return byLaw == Held.NO_LIMIT ? List.of(byMaker) : List.of(byMaker, byLaw);
  }

  private Held byRow(List<Figure> rows, Optional<Figure> fitting, WheelEndView end, Facts part) {
    if (fitting.isEmpty()) {
      boolean mayFit = rows.stream().anyMatch(row -> mayFit(row, end, part));
      return mayFit ? Held.OPEN : Held.NO_LIMIT;
    }
    Optional<Quantity<?>> value = fitting.get().value(end);
    if (value.isEmpty()) {
      return fitting.get().restsOnTheBrake() ? Held.OPEN : Held.NO_LIMIT;
    }
    return new Bound(fitting.get(), value.get()).hold(job, part);
  }

  private static Optional<Figure> fitting(List<Figure> rows, WheelEndView end, Facts part) {
    Optional<Figure> sure =
        rows.stream()
            .filter(row -> !row.isOtherwise() && row.fit(end, part) == Fit.YES)
            .findFirst();
    if (sure.isPresent() || rows.stream().anyMatch(row -> mayFit(row, end, part))) {
      return sure;
    }
    return rows.stream().filter(Figure::isOtherwise).findFirst();
  }

  private static boolean mayFit(Figure row, WheelEndView end, Facts part) {
    return !row.isOtherwise() && row.fit(end, part) != Fit.NO;
  }

  /** The narrowest path wins, of equal ones the later. */
  private Optional<MakersLimit> makers(String limit, Facts part) {
    return job.makersLimits().stream()
        .filter(one -> one.limit().equals(limit) && one.covers(part.place().toString()))
        .reduce((one, other) -> narrower().compare(one, other) > 0 ? one : other);
  }

  private static Comparator<MakersLimit> narrower() {
    return Comparator.comparing(one -> one.on().length());
  }
}
