package org.brakerules.work;

/** What a step is done to. */
public enum WorkLevel {
  /** The whole vehicle or combination. */
  VEHICLE,
  /** One axle. */
  AXLE,
  /** One wheel end. */
  WHEEL_END
}
