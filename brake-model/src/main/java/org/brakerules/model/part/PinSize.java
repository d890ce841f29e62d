package org.brakerules.model.part;

/** The nominal size of a clevis pin. */
public enum PinSize {
  QUARTER_INCH,
  HALF_INCH,
  FIVE_EIGHTHS_INCH,
  UNKNOWN
}
