package org.brakerules.work;

import java.util.Locale;

/** The phases of the work, in their order. */
public enum WorkPhase {
  /** The vehicle is parked, and the strokes are read as found. */
  ARRIVE,
  /** The load is blocked, the spring brakes are caged, the air is drained. */
  SECURE,
  /** The brake is taken apart. */
  TEARDOWN,
  /** It is washed, looked at and measured. */
  INSPECT,
  /** Every part is decided. */
  DECIDE,
  /** What goes back is cleaned and put right. */
  PREPARE,
  /** The brake is put together. */
  ASSEMBLE,
  /** The air comes up, the spring brakes are uncaged, the adjusters get their first setting. */
  SET,
  /** The work is proved. */
  PROVE;

  /** The phase in a heading, such as {@code teardown}. */
  public String inWords() {
    return name().toLowerCase(Locale.ROOT);
  }
}
