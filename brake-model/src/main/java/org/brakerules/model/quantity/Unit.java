package org.brakerules.model.quantity;

/**
 * A unit in which one kind of quantity is written.
 *
 * @param <Q> the kind of quantity
 */
public sealed interface Unit<Q extends Quantity<Q>>
    permits LengthUnit, ForceUnit, TorqueUnit, PressureUnit, AngleUnit, ShareUnit {

  /** The symbol after the number, upper and lower case as written: {@code in}, {@code kPa}. */
  String symbol();
}
