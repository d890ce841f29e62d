package org.brakerules.work;

import java.util.Locale;

/** A surface that is greased at assembly, or stays dry. */
public enum Surface {
  /** The ends of a cam roller, where the webs carry them. */
  ROLLER_END(false),
  /** The journals of the camshaft. */
  CAMSHAFT_JOURNAL(false),
  /** The bushings of the camshaft. */
  CAMSHAFT_BUSHING(false),
  /** The spline of the camshaft, lightly. */
  CAMSHAFT_SPLINE(false),
  /** The lips of the camshaft seals. */
  SEAL_LIP(false),
  /** The gear of the slack adjuster, through its own fitting. */
  ADJUSTER_GEAR(false),
  /** The anchor pins, where they turn. */
  ANCHOR_PIN(false),
  /** The tread of a cam roller. */
  ROLLER_TREAD(true),
  /** The profile of the cam. */
  CAM_PROFILE(true),
  /** The linings. */
  LINING(true),
  /** The drum. */
  DRUM(true);

  private final boolean dry;

  Surface(boolean dry) {
    this.dry = dry;
  }

  /** Whether it must stay dry. */
  public boolean isDry() {
    return dry;
  }

  /** The surface in a sentence, such as {@code roller tread}. */
  public String inWords() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
