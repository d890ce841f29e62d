package org.brakerules.model.quantity;

/** The unit of shares. */
public enum ShareUnit implements Unit<Share> {
  /** Percent. */
  PERCENT;

  @Override
  public String symbol() {
    return "%";
  }
}
