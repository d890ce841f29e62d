package org.brakerules.model.part;

/** How the wheel bearings get their end play. */
public enum BearingSetting {
  /** Set with the nuts when the hub is fitted. */
  HAND_SET,
  /** Set by the maker of the hub, not to be opened. */
  PRE_SET,
  UNKNOWN
}
