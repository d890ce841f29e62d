package org.brakerules.model.part;

/** The hand of a camshaft: the way its S is turned, seen from the head. */
public enum Hand {
  LEFT,
  RIGHT,
  UNKNOWN
}
