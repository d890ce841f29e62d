package org.brakerules.model.quantity;

import java.math.BigDecimal;

/** The units of length. */
public enum LengthUnit implements Unit<Length> {
  /** Inch: 25.4 mm exactly. */
  INCH("in", new BigDecimal("25400000")),
  /** Millimetre. */
  MILLIMETRE("mm", new BigDecimal("1000000"));

  private final String symbol;

  /** One of this unit in nanometres, exactly. */
  final BigDecimal nanometres;

  LengthUnit(String symbol, BigDecimal nanometres) {
    this.symbol = symbol;
    this.nanometres = nanometres;
  }

  @Override
  public String symbol() {
    return symbol;
  }
}
