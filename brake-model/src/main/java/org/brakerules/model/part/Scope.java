package org.brakerules.model.part;

/** How far the brake has been taken apart. Each scope includes the ones before it. */
public enum Scope {
  /** The wheel is on; nothing is disturbed. */
  WHEEL_ON,
  /** Wheel and drum are off. */
  DRUM_OFF,
  /** The shoes are off as well. */
  SHOES_OFF,
  /** The camshaft has been withdrawn as well. */
  CAMSHAFT_OUT;

  /** Whether a job of this scope opens at least as much as {@code other}. */
  public boolean reaches(Scope other) {
    return compareTo(other) >= 0;
  }
}
