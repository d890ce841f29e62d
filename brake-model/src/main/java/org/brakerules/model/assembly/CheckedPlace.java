package org.brakerules.model.assembly;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What one person recorded of one wheel end, or of the vehicle.
 *
 * @param on the path of the wheel end, or {@code vehicle}
 * @param by who did it
 * @param date the day
 * @param checks the checks that were made, one of each id at most
 */
public record CheckedPlace(String on, String by, LocalDate date, List<RecordedCheck> checks) {

  /** The name of the vehicle as a place. */
  public static final String VEHICLE = "vehicle";

  /**
   * Keeps its own copy of the checks.
   *
   * @throws IllegalArgumentException if a check is there twice
   */
  public CheckedPlace {
    checks = List.copyOf(checks);
    if (checks.stream().map(RecordedCheck::check).distinct().count() < checks.size()) {
      throw new IllegalArgumentException("A check of " + on + " is there twice.");
    }
  }

  /** What was recorded of a check; empty if nothing was. */
  public Optional<RecordedCheck> check(String id) {
    return checks.stream().filter(one -> one.check().equals(id)).findFirst();
  }
}
