package org.brakerules.internal.work;

import java.util.Comparator;
import org.brakerules.work.WorkLevel;

/**
 * The vehicle, an axle or a wheel end.
 *
 * @param level which of them
 * @param on the path of the axle or wheel end; empty for the vehicle
 * @param axle the rank of the axle among those of the job, from 1; 0 for the vehicle
 * @param end the rank of the wheel end among those of the job, from 1; 0 for an axle or the vehicle
 */
record Area(WorkLevel level, String on, int axle, int end) {

  static final Comparator<Area> ORDER = Comparator.comparing(Area::axle).thenComparing(Area::end);

  static final Area VEHICLE = new Area(WorkLevel.VEHICLE, "", 0, 0);

  /** Whether the other lies in it, or is it. */
  boolean covers(Area other) {
    return switch (level) {
      case VEHICLE -> true;
      case AXLE -> other.axle() == axle;
      case WHEEL_END -> other.end() == end;
    };
  }

  /** Whether what is done to the one concerns the other. */
  boolean concerns(Area other) {
    return covers(other) || other.covers(this);
  }
}
