package org.brakerules.model.job;

import java.time.LocalDate;
import org.brakerules.model.part.AtMost;
import org.brakerules.model.part.Means;
import org.brakerules.model.quantity.Length;

/**
 * How thick a lining was at its thinnest point at an earlier inspection, and how far the vehicle
 * ran since. The lining must be the same one.
 *
 * @param on the path of the lining
 * @param date the day of the earlier inspection
 * @param thickness how thick it was then at its thinnest point, above zero
 * @param odometer what the odometer showed then
 * @param odometerNow what it shows at the inspection of the job, in the same unit and more
 */
public record EarlierLining(
    @Means("the path of the lining") String on,
    @Means("the day of the earlier inspection") LocalDate date,
    @Means("how thick the lining was then at its thinnest point") @AtMost("2 in") Length thickness,
    @Means("what the odometer showed then") Odometer odometer,
    @Means("what it shows now, in the same unit") Odometer odometerNow) {

  /**
   * Checks the earlier inspection.
   *
   * @throws IllegalArgumentException if the lining had no thickness, or the odometers have not one
   *     unit or did not go on
   */
  public EarlierLining {
    if (thickness.nanometres() <= 0) {
      throw new IllegalArgumentException("No thickness of a lining: " + thickness);
    }
    if (!odometer.unit().equals(odometerNow.unit())
        || odometer.distance().compareTo(odometerNow.distance()) >= 0) {
      throw new IllegalArgumentException(
          "An odometer does not go from " + odometer + " to " + odometerNow + ".");
    }
  }
}
