package org.brakerules.finalcheck;

import java.util.List;

/**
 * The final check of one wheel end, or of the vehicle.
 *
 * @param on the path of the wheel end, or {@code vehicle}
 * @param by who recorded it, and the day; empty if nothing was recorded
 * @param keptBackBy what keeps it back beside its checks: a hold, an undecided part, a plan that
 *     stops; in a sentence each
 * @param checks every check its plan needs, in the order of their ids
 */
public record PlaceResult(String on, String by, List<String> keptBackBy, List<CheckResult> checks) {

  /** Keeps its own copies of the lists. */
  public PlaceResult {
    keptBackBy = List.copyOf(keptBackBy);
    checks = List.copyOf(checks);
  }

  /** Whether everything it needs has passed, and nothing else keeps it back. */
  public boolean released() {
    return keptBackBy.isEmpty() && checks.stream().noneMatch(CheckResult::keepsBack);
  }
}
