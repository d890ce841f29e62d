package org.brakerules.model.quantity;

import java.math.BigDecimal;

/** The units of angle. */
public enum AngleUnit implements Unit<Angle> {
  /** Degree. */
  DEGREE("deg", new BigDecimal("1000000")),
  /** Full turn, 360 degrees: how far an adjuster is backed off. */
  TURN("turn", new BigDecimal("360000000"));

  private final String symbol;

  /** One of this unit in millionths of a degree, exactly. */
  final BigDecimal microdegrees;

  AngleUnit(String symbol, BigDecimal microdegrees) {
    this.symbol = symbol;
    this.microdegrees = microdegrees;
  }

  @Override
  public String symbol() {
    return symbol;
  }
}
