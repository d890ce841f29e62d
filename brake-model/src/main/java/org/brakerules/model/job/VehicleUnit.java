package org.brakerules.model.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.part.Means;

/**
 * One unit of a vehicle or combination, such as the tractor or a trailer.
 *
 * @param name the name of the unit; empty where there is one unit only
 * @param builtOn the day it was built; empty if not stated
 * @param axles the axles with inspected wheel ends
 */
public record VehicleUnit(
    String name,
    @Means("the day the vehicle was built") Optional<LocalDate> builtOn,
    List<Axle> axles) {

  /**
   * Keeps its own copy of the axles.
   *
   * @throws IllegalArgumentException if there is none, if one is there twice, or if a wheel end is
   *     named after another unit
   */
  public VehicleUnit {
    axles = List.copyOf(axles);
    String shown = name.isEmpty() ? "The vehicle" : "Unit " + name;
    if (axles.isEmpty()) {
      throw new IllegalArgumentException(shown + " has no axle.");
    }
    if (axles.stream().map(Axle::number).distinct().count() < axles.size()) {
      throw new IllegalArgumentException(shown + " has an axle twice.");
    }
    for (Axle axle : axles) {
      for (WheelEnd end : axle.wheelEnds()) {
        if (!end.path().unit().equals(name)) {
          throw new IllegalArgumentException(end.path() + " does not belong to this unit.");
        }
      }
    }
  }
}
