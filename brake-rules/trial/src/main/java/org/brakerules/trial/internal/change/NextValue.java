package org.brakerules.trial.internal.change;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The values one step above and below one that is written in a table. */
final class NextValue {

  private static final Pattern DECIMAL = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)( .+)");
  private static final Pattern FRACTION = Pattern.compile("(?:([0-9]+) )?([0-9]+)/([0-9]+)( .+)");

  /** A sixty-fourth is the finest fraction that a steel rule has. */
  private static final int FINEST = 64;

  private NextValue() {}

  /** None for a value that is not written or in another form. */
  static Stream<String> of(String written) {
    Matcher fraction = FRACTION.matcher(written);
    if (fraction.matches()) {
      return fractions(fraction).stream();
    }
    Matcher decimal = DECIMAL.matcher(written);
    return decimal.matches() ? decimals(decimal).stream() : Stream.empty();
  }

  private static List<String> decimals(Matcher decimal) {
    BigDecimal number = new BigDecimal(decimal.group(1));
    BigDecimal step = number.ulp();
    String unit = decimal.group(2);
    return List.of(
        number.subtract(step).toPlainString() + unit, number.add(step).toPlainString() + unit);
  }

  private static List<String> fractions(Matcher fraction) {
    int whole = fraction.group(1) == null ? 0 : Integer.parseInt(fraction.group(1));
    int denominator = Integer.parseInt(fraction.group(3));
    int sixtyFourths = whole * FINEST + Integer.parseInt(fraction.group(2)) * FINEST / denominator;
    String unit = fraction.group(4);
    return List.of(
        (sixtyFourths - 1) + "/" + FINEST + unit, (sixtyFourths + 1) + "/" + FINEST + unit);
  }
}
