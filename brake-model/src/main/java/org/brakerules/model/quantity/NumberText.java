package org.brakerules.model.quantity;

import java.math.BigDecimal;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the number before a unit: a decimal, or a fraction where the trade uses fractions. */
final class NumberText {

  private static final Pattern DECIMAL = Pattern.compile("-?(?:[0-9]+|[0-9]*\\.([0-9]+))");
  private static final Pattern FRACTION = Pattern.compile("(-?)(?:([0-9]+) )?([0-9]+)/([0-9]+)");
  private static final Set<Long> DENOMINATORS = Set.of(2L, 4L, 8L, 16L, 32L, 64L);

  private NumberText() {}

  static BigDecimal read(WrittenQuantity<?> written, Unit<?> unit) {
    Matcher decimal = DECIMAL.matcher(written.number());
    if (decimal.matches()) {
      return decimal(written, decimal);
    }
    Matcher fraction = FRACTION.matcher(written.number());
    if (fraction.matches()) {
      return fraction(written, fraction, unit);
    }
    throw written.refused(
        "the number \"" + written.number() + "\" cannot be read", written.kind().described());
  }

  private static BigDecimal decimal(WrittenQuantity<?> written, Matcher decimal) {
    String afterPoint = decimal.group(1);
    if (afterPoint != null && afterPoint.length() > Exact.DECIMALS_SHOWN) {
      throw written.refused(
          "it has more than " + Exact.DECIMALS_SHOWN + " decimal places",
          "no more than " + Exact.DECIMALS_SHOWN + " decimal places");
    }
    return new BigDecimal(written.number());
  }

  private static BigDecimal fraction(WrittenQuantity<?> written, Matcher fraction, Unit<?> unit) {
    String sign = fraction.group(1);
    long whole = fraction.group(2) == null ? 0 : Long.parseLong(fraction.group(2));
    long numerator = Long.parseLong(fraction.group(3));
    long denominator = Long.parseLong(fraction.group(4));
    if (!DENOMINATORS.contains(denominator)) {
      throw refusedDenominator(written, denominator);
    }
    if (numerator >= denominator) {
      throw written.refused(
          "its fraction is not below 1",
          written.rewritten(sign + mixed(whole, numerator, denominator)));
    }
    BigDecimal size =
        BigDecimal.valueOf(whole)
            .add(BigDecimal.valueOf(numerator).divide(BigDecimal.valueOf(denominator)));
    BigDecimal value = sign.isEmpty() ? size : size.negate();
    if (!written.kind().withFractions().contains(unit)) {
      throw written.refused(
          unit.symbol() + " takes no fractions", written.rewritten(value.toPlainString()));
    }
    return value;
  }

  private static QuantityFormatException refusedDenominator(
      WrittenQuantity<?> written, long denominator) {
    String wrong =
        denominator == 0
            ? "a fraction over 0 has no value"
            : "fractions over " + denominator + " are not kept";
    return written.refused(wrong, "a fraction over 2, 4, 8, 16, 32 or 64, or a decimal");
  }

  private static String mixed(long whole, long numerator, long denominator) {
    long wholes = whole + numerator / denominator;
    long rest = numerator % denominator;
    return rest == 0 ? Long.toString(wholes) : wholes + " " + rest + "/" + denominator;
  }
}
