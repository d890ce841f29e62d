package org.brakerules.model.layout;

/** The lining of one shoe. */
public enum LiningPieces {
  /** One continuous strip. */
  STRIP,
  /** Two blocks. */
  TWO_BLOCKS,
  UNKNOWN
}
