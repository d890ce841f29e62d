package org.brakerules.model.layout;

/** The stroke class of a brake chamber. */
public enum StrokeClass {
  STANDARD,
  LONG,
  UNKNOWN
}
