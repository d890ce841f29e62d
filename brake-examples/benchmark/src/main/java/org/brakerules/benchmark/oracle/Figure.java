package org.brakerules.benchmark.oracle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Station;

/**
 * One row of figures: what a reading is held against.
 *
 * <p>The cells are the id, the property, the figure, where and how the reading counts, which parts
 * it is for, and whose law it is ({@code law:}), in which rule set alone it holds ({@code only:}),
 * from and to which day.
 */
record Figure(
    PartKind part,
    String id,
    String property,
    Comparison comparison,
    String value,
    Optional<Station> station,
    Set<Method> methods,
    Optional<Moment> moment,
    Which which,
    boolean isOtherwise,
    List<String> holds) {

  private static final String VIRGINIA = "us-virginia";
  private static final String OTHERWISE = "otherwise";
  private static final String SHARE_OF_RATED_STROKE = "80 % of the rated stroke";

  static List<Figure> read(PartKind part, String table) {
    return table.lines().filter(line -> !line.isBlank()).map(row -> row(part, row)).toList();
  }

  private static Figure row(PartKind part, String row) {
    List<String> cells = Arrays.stream(row.split("\\|", -1)).map(String::strip).toList();
    Comparison comparison =
        Stream.of(Comparison.values())
            .filter(one -> cells.get(2).startsWith(one.inWords()))
            .findFirst()
            .orElseThrow();
    List<String> where = List.of(cells.get(3).split("\\s+", -1));
    Set<Method> methods = EnumSet.noneOf(Method.class);
    where.forEach(word -> Method.byId(word).ifPresent(methods::add));
    return new Figure(
        part,
        part.id() + "." + cells.get(0),
        cells.get(1),
        comparison,
        cells.get(2).substring(comparison.inWords().length()).strip(),
        where.stream().flatMap(word -> Station.byId(word).stream()).findFirst(),
        methods,
        Stream.of(Moment.values()).filter(moment -> where.contains(moment.id())).findFirst(),
        cells.get(4).equals(OTHERWISE) ? Which.ALL : Which.read(cells.get(4)),
        cells.get(4).equals(OTHERWISE),
        cells.get(5).isEmpty() ? List.of() : List.of(cells.get(5).split("\\s+", -1)));
  }

  /** Virginia fails a stroke that is equal to the figure; all others pass it. */
  Figure under(BrakeJob job) {
    if (!id.equals("chamber.applied-stroke.max") || !job.ruleSet().id().equals(VIRGINIA)) {
      return this;
    }
    List<String> words = new ArrayList<>(holds);
    words.add("law:" + VIRGINIA);
    return new Figure(
        part,
        id,
        property,
        Comparison.LESS_THAN,
        value,
        station,
        methods,
        moment,
        which,
        isOtherwise,
        words);
  }

  boolean isLawOf(BrakeJob job) {
    return holds.contains("law:" + job.ruleSet().id());
  }

  /** Whether day and rule set of the job are those of the row. */
  boolean holds(BrakeJob job) {
    return holds.stream().allMatch(word -> holds(job, word));
  }

  private static boolean holds(BrakeJob job, String word) {
    String value = word.substring(word.indexOf(':') + 1);
    if (word.startsWith("only:")) {
      return job.ruleSet().id().equals(value);
    }
    if (word.startsWith("from:")) {
      return !job.date().isBefore(LocalDate.parse(value));
    }
    return !word.startsWith("to:") || !job.date().isAfter(LocalDate.parse(value));
  }

  Fit fit(WheelEndView end, Facts part) {
    return which.fit(end, part);
  }

  /** The value for a wheel end; empty if there is none, or it rests on something unstated. */
  Optional<Quantity<?>> value(WheelEndView end) {
    if (value.equals(SHARE_OF_RATED_STROKE)) {
      return end.layout().chamber().ratedStroke().map(Figure::fourFifths);
    }
    return value.isEmpty() ? Optional.empty() : Optional.of(Quantities.parse(value));
  }

  boolean restsOnTheBrake() {
    return value.equals(SHARE_OF_RATED_STROKE);
  }

  /** Readings are whole nanometres, so the fraction of one decides nothing. */
  private static Quantity<?> fourFifths(Length rated) {
    return new Length(Math.floorDiv(rated.nanometres() * 4, 5), rated.unit());
  }
}
