package org.brakerules.model.part;

/** Whether a part is where it belongs. */
public enum Presence {
  /** The part is there. */
  FITTED,
  /** The brake should have the part, and it is not there. */
  MISSING,
  /** This brake does not have the part. Of an essential part it counts as missing. */
  NOT_FITTED
}
