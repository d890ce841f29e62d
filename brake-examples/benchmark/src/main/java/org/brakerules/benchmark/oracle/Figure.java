package org.brakerules.benchmark.oracle;

import java.time.LocalDate;
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
 *
 * @param value the figure; empty if there is none, or it is a share of the rated stroke
 * @param ofRatedStroke whether it is the share of the rated stroke
 * @param isOtherwise whether it is for the parts that no other row of its limit is for
 */
record Figure(
    PartKind part,
    String id,
    String property,
    Comparison comparison,
    Optional<Quantity<?>> value,
    boolean ofRatedStroke,
    Optional<Station> station,
    Set<Method> methods,
    Optional<Moment> moment,
    Which which,
    boolean isOtherwise,
    Validity holds) {

  private static final String OTHERWISE = "otherwise";
  private static final String SHARE_OF_RATED_STROKE = "80 % of the rated stroke";

  /** Under which rule sets and on which days a row holds. */
  record Validity(
      Optional<String> law,
      Optional<String> only,
      Optional<String> except,
      Optional<LocalDate> from,
      Optional<LocalDate> to) {

    static Validity read(String cell) {
      List<String> words = List.of(cell.split("\\s+", -1));
      return new Validity(
          word(words, "law:"),
          word(words, "only:"),
          Optional.empty(),
          word(words, "from:").map(LocalDate::parse),
          word(words, "to:").map(LocalDate::parse));
    }

    private static Optional<String> word(List<String> words, String key) {
      return words.stream()
          .filter(word -> word.startsWith(key))
          .map(word -> word.substring(key.length()))
          .findFirst();
    }

    Validity exceptUnder(String ruleSet) {
      return new Validity(law, only, Optional.of(ruleSet), from, to);
    }

    Validity onlyUnder(String ruleSet) {
      Optional<String> one = Optional.of(ruleSet);
      return new Validity(one, one, Optional.empty(), from, to);
    }

    boolean holds(BrakeJob job) {
      String ruleSet = job.ruleSet().id();
      return (only.isEmpty() || only.get().equals(ruleSet))
          && (except.isEmpty() || !except.get().equals(ruleSet))
          && (from.isEmpty() || !job.date().isBefore(from.get()))
          && (to.isEmpty() || !job.date().isAfter(to.get()));
    }
  }

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
    String value = cells.get(2).substring(comparison.inWords().length()).strip();
    boolean share = value.equals(SHARE_OF_RATED_STROKE);
    boolean otherwise = cells.get(4).equals(OTHERWISE);
    List<String> where = List.of(cells.get(3).split("\\s+", -1));
    return new Figure(
        part,
        part.id() + "." + cells.get(0),
        cells.get(1),
        comparison,
        share || value.isEmpty() ? Optional.empty() : Optional.of(Quantities.parse(value)),
        share,
        where.stream().flatMap(word -> Station.byId(word).stream()).findFirst(),
        methods(where),
        Stream.of(Moment.values()).filter(moment -> where.contains(moment.id())).findFirst(),
        otherwise ? Which.ALL : Which.read(part, cells.get(4)),
        otherwise,
        Validity.read(cells.get(5)));
  }

  private static Set<Method> methods(List<String> where) {
    Set<Method> methods = EnumSet.noneOf(Method.class);
    where.forEach(word -> Method.byId(word).ifPresent(methods::add));
    return methods;
  }

  /** The same row where one rule set holds it on another side. */
  Figure exceptUnder(String ruleSet) {
    return with(comparison, holds.exceptUnder(ruleSet));
  }

  /** The row as that rule set holds it, which is its law. */
  Figure heldUnder(String ruleSet, Comparison side) {
    return with(side, holds.onlyUnder(ruleSet));
  }

  private Figure with(Comparison side, Validity validity) {
    return new Figure(
        part,
        id,
        property,
        side,
        value,
        ofRatedStroke,
        station,
        methods,
        moment,
        which,
        isOtherwise,
        validity);
  }

  boolean isLawOf(BrakeJob job) {
    return holds.law().isPresent() && holds.law().get().equals(job.ruleSet().id());
  }

  /** The value at a wheel end; empty if there is none, or it rests on something unstated. */
  Optional<? extends Quantity<?>> value(WheelEndView end) {
    return ofRatedStroke ? end.layout().chamber().ratedStroke().map(Figure::fourFifths) : value;
  }

  /** Readings are whole nanometres, so the fraction of one decides nothing. */
  private static Length fourFifths(Length rated) {
    return new Length(Math.floorDiv(rated.nanometres() * 4, 5), rated.unit());
  }
}
