package org.brakerules.benchmark.oracle;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.model.quantity.Length;

/**
 * Which parts a row of a table is for, written as {@code layout.camshaft=tube/split;
 * part.condition=new}; empty for all.
 */
record Which(List<Term> terms) {

  static final Which ALL = new Which(List.of());

  private record Term(String path, boolean excluded, List<String> values) {

    static Term read(String text) {
      String[] sides = text.split("=", 2);
      boolean excluded = sides[1].startsWith("not ");
      String values = excluded ? sides[1].substring("not ".length()) : sides[1];
      return new Term(
          sides[0].strip(),
          excluded,
          Arrays.stream(values.split("/", -1)).map(Term::plain).toList());
    }

    private static String plain(String value) {
      boolean length = value.endsWith(" in") || value.endsWith(" mm");
      return length ? States.amount(Length.parse(value)) : value;
    }

    Fit fit(WheelEndView end, Facts part) {
      String value = path.startsWith("part.") ? part.state(path.substring(5)) : end.state(path);
      if (values.contains(value)) {
        return excluded ? Fit.NO : Fit.YES;
      }
      if (value.isEmpty() || value.equals("unknown") || value.equals("not-checked")) {
        return Fit.UNSTATED;
      }
      return excluded ? Fit.YES : Fit.NO;
    }
  }

  static Which read(String text) {
    return text.isBlank()
        ? ALL
        : new Which(Arrays.stream(text.split(";", -1)).map(String::strip).map(Term::read).toList());
  }

  Which and(String text) {
    List<Term> more = read(text).terms;
    return new Which(Stream.concat(terms.stream(), more.stream()).toList());
  }

  Fit fit(WheelEndView end, Facts part) {
    return terms.stream().map(term -> term.fit(end, part)).reduce(Fit.YES, Fit::and);
  }
}
