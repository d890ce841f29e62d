package org.brakerules.model.reading;

import java.util.Optional;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Quantity;

/**
 * One reading: a value, and where and how it was taken.
 *
 * @param value the value, never negative
 * @param written the value as it was written down, such as {@code 5 11/16 in}
 * @param station where it was taken; {@link Station#UNKNOWN} if not stated
 * @param method how it was taken; {@link Method#UNKNOWN} if not stated
 * @param uncertainty the expanded uncertainty of the reading, never negative; empty if not stated
 * @param reservoirPressure the reservoir pressure while the reading was taken; empty if not stated
 * @param moment when in the job it was taken; {@link Moment#UNKNOWN} if not stated
 */
public record Reading<Q extends Quantity<Q>>(
    Q value,
    String written,
    Station station,
    Method method,
    Optional<Q> uncertainty,
    Optional<Pressure> reservoirPressure,
    Moment moment) {

  /**
   * Checks the reading.
   *
   * @throws IllegalArgumentException if the value or its uncertainty is negative
   */
  public Reading {
    refuseNegative(value);
    uncertainty.ifPresent(Reading::refuseNegative);
  }

  /** A reading of which nothing but value, station and method is stated. */
  public static <Q extends Quantity<Q>> Reading<Q> of(Q value, Station station, Method method) {
    return new Reading<>(
        value,
        value.toString(),
        station,
        method,
        Optional.empty(),
        Optional.empty(),
        Moment.UNKNOWN);
  }

  /** The same reading with its expanded uncertainty. */
  public Reading<Q> plusOrMinus(Q expanded) {
    return new Reading<>(
        value, written, station, method, Optional.of(expanded), reservoirPressure, moment);
  }

  /** The same reading taken as if it were exact. */
  public Reading<Q> withoutUncertainty() {
    return new Reading<>(
        value, written, station, method, Optional.empty(), reservoirPressure, moment);
  }

  /** The same reading with the reservoir pressure it was taken at. */
  public Reading<Q> atReservoirPressure(Pressure pressure) {
    return new Reading<>(
        value, written, station, method, uncertainty, Optional.of(pressure), moment);
  }

  /** The same reading with the moment it was taken. */
  public Reading<Q> taken(Moment when) {
    return new Reading<>(value, written, station, method, uncertainty, reservoirPressure, when);
  }

  private static void refuseNegative(Quantity<?> quantity) {
    if (quantity.isNegative()) {
      throw new IllegalArgumentException(
          "A reading of " + quantity + " is negative; write what the instrument showed.");
    }
  }
}
