package org.brakerules.model.quantity;

import java.math.BigDecimal;

/**
 * Reads a number and its unit, such as {@code 0.030 in}, {@code 5 11/16 in} or {@code 50%}.
 *
 * @param written the text it was read from
 * @param number the number, at most 12 digits and 6 decimal places
 * @param unit the unit
 */
record NumberAndUnit<U extends Unit<?>>(WrittenQuantity<U> written, BigDecimal number, U unit) {

  /** Reads a number with its unit. */
  static <U extends Unit<?>> NumberAndUnit<U> read(String text, Kind<U> kind) {
    return read(WrittenQuantity.split(text, kind));
  }

  /** Reads a number alone, its unit being known. */
  static <U extends Unit<?>> NumberAndUnit<U> read(String text, Kind<U> kind, U unit) {
    WrittenQuantity<U> number = WrittenQuantity.split(text, kind);
    if (kind.unit(number.symbol()).isPresent()) {
      throw number.refused("only the number of " + unit.symbol() + " is expected here", "no unit");
    }
    String symbol = number.symbol().isEmpty() ? unit.symbol() : number.symbol();
    return read(new WrittenQuantity<>(number.found(), kind, number.number(), symbol));
  }

  private static <U extends Unit<?>> NumberAndUnit<U> read(WrittenQuantity<U> written) {
    if (!written.isPlain()) {
      NumberMistake.refuseAny(written);
    }
    U unit = written.unit();
    return new NumberAndUnit<>(written, NumberText.read(written, unit), unit);
  }

  /**
   * The amount as a whole number of the smallest step that is kept.
   *
   * @param size one unit in smallest steps
   */
  long whole(BigDecimal size) {
    BigDecimal amount = number.multiply(size).stripTrailingZeros();
    if (amount.scale() > 0) {
      // Only inches come here: their sixth decimal place is a whole nanometre for some digits only.
      throw written.refused(
          "it is finer than what is kept exactly", "no more than 5 decimal places");
    }
    return Exact.whole(written.kind(), amount::longValueExact, written::found);
  }
}
