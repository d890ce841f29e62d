package org.brakerules.model.layout;

/** How the drum is mounted. */
public enum DrumMount {
  /** Comes off without the hub. */
  OUTBOARD,
  /** Comes off with the hub. */
  INBOARD,
  UNKNOWN
}
