package org.brakerules.model.quantity;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * An angle, exact in millionths of a degree.
 *
 * @param microdegrees the amount in millionths of a degree
 * @param unit the unit it was written in
 */
public record Angle(long microdegrees, AngleUnit unit) implements Quantity<Angle> {

  /**
   * Reads an angle such as {@code 0.5 deg} or {@code 1/4 turn}.
   *
   * @throws QuantityFormatException if the text is not such an angle
   */
  public static Angle parse(String text) {
    NumberAndUnit<AngleUnit> read = NumberAndUnit.read(text, Kind.ANGLE);
    return new Angle(read.whole(read.unit().microdegrees), read.unit());
  }

  @Override
  public int compareTo(Angle other) {
    return Long.compare(microdegrees, other.microdegrees);
  }

  @Override
  public Angle plus(Angle other) {
    long sum =
        Exact.whole(
            Kind.ANGLE,
            () -> Math.addExact(microdegrees, other.microdegrees),
            () -> this + " plus " + other);
    return new Angle(sum, commonUnit(other));
  }

  @Override
  public Angle minus(Angle other) {
    long difference =
        Exact.whole(
            Kind.ANGLE,
            () -> Math.subtractExact(microdegrees, other.microdegrees),
            () -> this + " minus " + other);
    return new Angle(difference, commonUnit(other));
  }

  @Override
  public Angle abs() {
    long amount =
        Exact.whole(
            Kind.ANGLE, () -> Math.absExact(microdegrees), () -> this + " without its sign");
    return new Angle(amount, unit);
  }

  @Override
  public boolean isNegative() {
    return microdegrees < 0;
  }

  @Override
  public String format(Unit<Angle> in) {
    return Exact.text(BigDecimal.valueOf(microdegrees), ((AngleUnit) in).microdegrees, in);
  }

  @Override
  public String toString() {
    return format(unit);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Angle that && microdegrees == that.microdegrees;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(microdegrees);
  }

  private AngleUnit commonUnit(Angle other) {
    return unit == other.unit ? unit : AngleUnit.DEGREE;
  }
}
