package org.brakerules.model.layout;

/** What must be alike at both ends of an axle. */
public enum AxleMatter {
  /** Family and type of the chambers. */
  CHAMBER_SIZE,
  /** Stroke class of the chambers. */
  STROKE_CLASS,
  /** Kind of slack adjuster. */
  ADJUSTER_KIND,
  /** Effective length of the adjuster arms. */
  ARM_LENGTH
}
