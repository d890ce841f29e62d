package org.brakerules.model.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/** The exact arithmetic that all quantities share. */
final class Exact {

  /** Decimal places that are shown when they make the text exact. */
  static final int DECIMALS_SHOWN = 6;

  private static final int DECIMALS_ROUNDED = 4;

  /** Far beyond any sum of what can be written; keeps a stray exponent from filling the memory. */
  private static final int MOST_DIGITS = 40;

  private Exact() {}

  /** The result of a calculation in whole numbers, refused if it does not fit. */
  static long whole(Kind<?> kind, LongSupplier calculation, Supplier<String> asWritten) {
    try {
      return calculation.getAsLong();
    } catch (ArithmeticException tooLarge) {
      throw tooLarge(asWritten.get(), kind);
    }
  }

  /** The amount without trailing zeros, so that equal amounts have equal hash codes. */
  static BigDecimal kept(Kind<?> kind, BigDecimal amount) {
    BigDecimal stripped = amount.stripTrailingZeros();
    long digitsBeforePoint = (long) stripped.precision() - stripped.scale();
    if (digitsBeforePoint > MOST_DIGITS) {
      throw tooLarge(amount.toString(), kind);
    }
    if (stripped.scale() > MOST_DIGITS) {
      throw new QuantityFormatException(
          amount.toString(),
          kind,
          "it is too fine to be kept exactly",
          "at most " + MOST_DIGITS + " decimal places");
    }
    return stripped;
  }

  /** An amount shown in a unit of the given size. */
  static String text(BigDecimal amount, BigDecimal size, Unit<?> unit) {
    BigDecimal fine = amount.divide(size, DECIMALS_SHOWN, RoundingMode.HALF_EVEN);
    boolean isExact = fine.multiply(size).compareTo(amount) == 0;
    String number =
        isExact
            ? fine.stripTrailingZeros().toPlainString()
            : "about "
                + amount.divide(size, DECIMALS_ROUNDED, RoundingMode.HALF_EVEN).toPlainString();
    return number + " " + unit.symbol();
  }

  static QuantityFormatException tooLarge(String found, Kind<?> kind) {
    return new QuantityFormatException(
        found, kind, "it is too large to be kept exactly", "a smaller " + kind.name());
  }
}
