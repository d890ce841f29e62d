package org.brakerules.model.part;

/** The kind of a camshaft seal. */
public enum SealKind {
  ONE_LIP,
  /** A grease lip and a second lip against dust; the main lip counts for the direction. */
  MAIN_AND_DUST_LIP,
  /** An O-ring or packing, which has no direction. */
  O_RING,
  UNKNOWN
}
