package org.brakerules.model.layout;

/** The kind of slack adjuster. */
public enum AdjusterKind {
  MANUAL,
  /** Automatic, of the pawl kind. */
  AUTOMATIC_PAWL,
  /** Automatic, of the clutch kind. */
  AUTOMATIC_CLUTCH,
  UNKNOWN
}
