package org.brakerules.model.kit;

/** How much of a vehicle one kit is packed for. */
public enum KitReach {
  /** One wheel end. */
  WHEEL_END,
  /** Both wheel ends of an axle. */
  AXLE,
  /** Neither: a loose part. */
  PIECE
}
