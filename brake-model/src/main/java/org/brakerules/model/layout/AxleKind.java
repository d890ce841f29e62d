package org.brakerules.model.layout;

/** What an axle does. */
public enum AxleKind {
  STEER,
  DRIVE,
  TRAILER,
  UNKNOWN
}
