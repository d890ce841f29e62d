package org.brakerules.model.quantity;

/**
 * An exact amount and the unit it was written in.
 *
 * <p>Order, {@code equals} and {@code hashCode} go by the amount alone; the unit only decides how
 * the amount is shown.
 *
 * @param <Q> the kind of quantity, for example {@link Length}
 */
public sealed interface Quantity<Q extends Quantity<Q>> extends Comparable<Q>
    permits Length, Force, Torque, Pressure, Angle, Share {

  /** The unit it was written in. */
  Unit<Q> unit();

  /**
   * Compares the two amounts exactly.
   *
   * @return negative, zero or positive as this amount is smaller, equal or larger
   */
  @Override
  int compareTo(Q other);

  /**
   * The exact sum, in the common unit of both; of mixed units in mm, N, N.m, kPa or deg.
   *
   * @throws QuantityFormatException if the sum is too large to be kept exactly
   */
  Q plus(Q other);

  /**
   * The exact difference, in the common unit of both; of mixed units in mm, N, N.m, kPa or deg.
   *
   * @throws QuantityFormatException if the difference is too large to be kept exactly
   */
  Q minus(Q other);

  /**
   * The amount without its sign.
   *
   * @throws QuantityFormatException if the amount is too large to be kept exactly
   */
  Q abs();

  /** True below zero. Differences may be negative. */
  boolean isNegative();

  /**
   * The amount in a unit, for example {@code 0.762 mm}: exact if 6 decimal places are enough for
   * it, otherwise rounded half-even to 4 with "about" before it. For people to read; limits are
   * held against the exact amount.
   */
  String format(Unit<Q> unit);

  /**
   * The amount in the unit it was written in, as {@link #format} gives it. What was read from a
   * text gives a text that reads as the same amount.
   */
  @Override
  String toString();
}
