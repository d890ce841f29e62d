package org.brakerules.model.part;

/** The side of the vehicle, seen by the driver. */
public enum Side {
  LEFT,
  RIGHT
}
