package org.brakerules.benchmark.oracle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Sign;
import org.brakerules.model.reading.Station;

/**
 * Which parts a row of a table is for, written as {@code layout.camshaft=tube/split;
 * part.condition=new}; empty for all.
 */
record Which(List<Term> terms) {

  static final Which ALL = new Which(List.of());

  private static final String OF_PART = "part.";
  private static final String NOT = "not ";

  private record Term(Function<Facts, Object> read, List<Object> values, boolean excluded) {

    Fit fit(Facts part) {
      Object value = read.apply(part);
      if (values.contains(value)) {
        return excluded ? Fit.NO : Fit.YES;
      }
      // A sign that nobody looked for was not seen, and is asked for by itself.
      if (!(value instanceof Sign) && BrakeState.isUnstated(value)) {
        return Fit.UNSTATED;
      }
      return excluded ? Fit.YES : Fit.NO;
    }
  }

  static Which read(PartKind kind, String text) {
    return text.isBlank()
        ? ALL
        : new Which(
            Arrays.stream(text.split(";", -1)).map(term -> term(kind, term.strip())).toList());
  }

  private static Term term(PartKind kind, String text) {
    String[] sides = text.split("=", 2);
    boolean excluded = sides[1].startsWith(NOT);
    String[] words = (excluded ? sides[1].substring(NOT.length()) : sides[1]).split("/", -1);
    Class<?> type = type(kind, sides[0]);
    List<Object> values = new ArrayList<>();
    for (String word : words) {
      values.add(BrakeState.parse(type, word));
    }
    return new Term(reader(kind, sides[0]), List.copyOf(values), excluded);
  }

  private static Class<?> type(PartKind kind, String path) {
    return switch (path) {
      case "part.condition" -> Condition.class;
      case "part.station" -> Station.class;
      default ->
          path.startsWith(OF_PART)
              ? Knowable.of(kind).type(number(kind, path))
              : BrakeState.of(path).type();
    };
  }

  private static Function<Facts, Object> reader(PartKind kind, String path) {
    if (path.equals("part.condition")) {
      return part -> part.part().condition();
    }
    if (path.equals("part.station")) {
      return Facts::station;
    }
    if (path.startsWith(OF_PART)) {
      int number = number(kind, path);
      return part -> part.value(number);
    }
    BrakeState state = BrakeState.of(path);
    return part -> state.read().apply(part.end());
  }

  private static int number(PartKind kind, String path) {
    return Knowable.of(kind).number(path.substring(OF_PART.length()));
  }

  Fit fit(Facts part) {
    Fit fit = Fit.YES;
    for (int i = 0; i < terms.size() && fit != Fit.NO; i++) {
      fit = fit.and(terms.get(i).fit(part));
    }
    return fit;
  }
}
