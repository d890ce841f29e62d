package org.brakerules.model.layout;

/** How a lining is held on its shoe. */
public enum LiningFastening {
  BONDED,
  RIVETED,
  BOLTED,
  UNKNOWN
}
