package org.brakerules.model.layout;

/** The family of a brake chamber. */
public enum ChamberFamily {
  CLAMP,
  BOLT,
  ROTOCHAMBER,
  DUAL_DIAPHRAGM,
  UNKNOWN
}
