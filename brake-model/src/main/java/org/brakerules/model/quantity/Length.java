package org.brakerules.model.quantity;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A length, exact in whole nanometres.
 *
 * <p>1 in = 25,400,000 nm, so every inch decimal to 5 places, every inch fraction to 1/64 and every
 * millimetre decimal to 6 places is kept without rounding. Anything finer is refused.
 *
 * @param nanometres the amount in nanometres
 * @param unit the unit it was written in
 */
public record Length(long nanometres, LengthUnit unit) implements Quantity<Length> {

  /**
   * Reads a length such as {@code 0.030 in}, {@code 5 11/16 in} or {@code 0.76 mm}.
   *
   * @throws QuantityFormatException if the text is not such a length
   */
  public static Length parse(String text) {
    return of(NumberAndUnit.read(text, Kind.LENGTH));
  }

  /**
   * Reads a number of inches such as {@code 0.030} or {@code 5 11/16}.
   *
   * @throws QuantityFormatException if the text is not such a number
   */
  public static Length inches(String number) {
    return of(NumberAndUnit.read(number, Kind.LENGTH, LengthUnit.INCH));
  }

  /**
   * Reads a number of millimetres such as {@code 0.76}.
   *
   * @throws QuantityFormatException if the text is not such a number
   */
  public static Length millimetres(String number) {
    return of(NumberAndUnit.read(number, Kind.LENGTH, LengthUnit.MILLIMETRE));
  }

  private static Length of(NumberAndUnit<LengthUnit> read) {
    return new Length(read.whole(read.unit().nanometres), read.unit());
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(nanometres, other.nanometres);
  }

  @Override
  public Length plus(Length other) {
    long sum =
        Exact.whole(
            Kind.LENGTH,
            () -> Math.addExact(nanometres, other.nanometres),
            () -> this + " plus " + other);
    return new Length(sum, commonUnit(other));
  }

  @Override
  public Length minus(Length other) {
    long difference =
        Exact.whole(
            Kind.LENGTH,
            () -> Math.subtractExact(nanometres, other.nanometres),
            () -> this + " minus " + other);
    return new Length(difference, commonUnit(other));
  }

  @Override
  public Length abs() {
    long amount =
        Exact.whole(Kind.LENGTH, () -> Math.absExact(nanometres), () -> this + " without its sign");
    return new Length(amount, unit);
  }

  @Override
  public boolean isNegative() {
    return nanometres < 0;
  }

  @Override
  public String format(Unit<Length> in) {
    return Exact.text(BigDecimal.valueOf(nanometres), ((LengthUnit) in).nanometres, in);
  }

  @Override
  public String toString() {
    return format(unit);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Length that && nanometres == that.nanometres;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(nanometres);
  }

  private LengthUnit commonUnit(Length other) {
    return unit == other.unit ? unit : LengthUnit.MILLIMETRE;
  }
}
