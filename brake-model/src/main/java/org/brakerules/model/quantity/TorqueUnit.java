package org.brakerules.model.quantity;

import java.math.BigDecimal;

/** The units of torque. */
public enum TorqueUnit implements Unit<Torque> {
  /** Pound-force inch, in shop manuals lb-in. */
  POUND_FORCE_INCH("lbf.in", ForceUnit.POUND_FORCE.newtons.multiply(new BigDecimal("0.0254"))),
  /** Pound-force foot, in shop manuals lb-ft: 12 lbf.in. */
  POUND_FORCE_FOOT("lbf.ft", ForceUnit.POUND_FORCE.newtons.multiply(new BigDecimal("0.3048"))),
  /** Newton metre. */
  NEWTON_METRE("N.m", BigDecimal.ONE);

  private final String symbol;

  /** One of this unit in newton metres, exactly. */
  final BigDecimal newtonMetres;

  TorqueUnit(String symbol, BigDecimal newtonMetres) {
    this.symbol = symbol;
    this.newtonMetres = newtonMetres;
  }

  @Override
  public String symbol() {
    return symbol;
  }
}
