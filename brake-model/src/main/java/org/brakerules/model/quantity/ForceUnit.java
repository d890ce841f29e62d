package org.brakerules.model.quantity;

import java.math.BigDecimal;

/** The units of force. */
public enum ForceUnit implements Unit<Force> {
  /** Pound-force: the weight of 0.45359237 kg at 9.80665 m/s2, 4.4482216152605 N exactly. */
  POUND_FORCE("lbf", new BigDecimal("4.4482216152605")),
  /** Newton. */
  NEWTON("N", BigDecimal.ONE),
  /** Kilonewton. */
  KILONEWTON("kN", new BigDecimal("1000"));

  private final String symbol;

  /** One of this unit in newtons, exactly. */
  final BigDecimal newtons;

  ForceUnit(String symbol, BigDecimal newtons) {
    this.symbol = symbol;
    this.newtons = newtons;
  }

  @Override
  public String symbol() {
    return symbol;
  }
}
