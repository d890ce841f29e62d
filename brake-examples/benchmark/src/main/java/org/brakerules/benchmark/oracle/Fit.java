package org.brakerules.benchmark.oracle;

/** Whether something speaks of a part. */
enum Fit {
  YES,
  /** It depends on something that the job does not state. */
  UNSTATED,
  NO;

  Fit and(Fit other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
