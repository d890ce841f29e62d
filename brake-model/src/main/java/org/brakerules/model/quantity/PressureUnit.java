package org.brakerules.model.quantity;

import java.math.BigDecimal;

/** The units of pressure. Air pressure in brakes is gauge pressure. */
public enum PressureUnit implements Unit<Pressure> {
  /** Pound-force per square inch. */
  PSI("psi", ForceUnit.POUND_FORCE.newtons),
  /** Kilopascal: 1000 newtons per square metre. */
  KILOPASCAL("kPa", new BigDecimal("0.64516")),
  /** Bar: 100 kPa. */
  BAR("bar", new BigDecimal("64.516"));

  private final String symbol;

  /** One of this unit in newtons per square inch of 645.16 mm2, exactly. */
  final BigDecimal newtonsPerSquareInch;

  PressureUnit(String symbol, BigDecimal newtonsPerSquareInch) {
    this.symbol = symbol;
    this.newtonsPerSquareInch = newtonsPerSquareInch;
  }

  @Override
  public String symbol() {
    return symbol;
  }
}
