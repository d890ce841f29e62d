package org.brakerules.calc.stroke;

/** A looseness that reverses at each application and so costs stroke each time. */
public enum Looseness {
  /** The large pin in the clevis. */
  PIN_IN_CLEVIS("large clevis pin in the clevis"),
  /** The large pin in the arm of the slack adjuster. */
  PIN_IN_ARM("large clevis pin in the arm"),
  /** The gear inside the slack adjuster. */
  ADJUSTER_GEAR("gear of the slack adjuster"),
  /** The spline of the camshaft in the gear. */
  SPLINE("camshaft spline"),
  /** The camshaft in its bushing at the spline end. */
  BUSHING_AT_SPLINE_END("camshaft bushing, spline end"),
  /** The camshaft in its bushing at the head end. */
  BUSHING_AT_HEAD_END("camshaft bushing, head end");

  private final String inWords;

  Looseness(String inWords) {
    this.inWords = inWords;
  }

  /** The looseness in a sentence. */
  public String inWords() {
    return inWords;
  }

  /** Whether the movement of the arm with the cam held shows it. */
  boolean isMeasuredAtArm() {
    return this == ADJUSTER_GEAR || this == SPLINE;
  }
}
