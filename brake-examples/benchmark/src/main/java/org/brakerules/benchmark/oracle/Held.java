package org.brakerules.benchmark.oracle;

/** How the readings of a part stand against one limit. */
enum Held {
  /** No limit is in force. */
  NO_LIMIT,
  WITHIN,
  /** No reading counts, or it proves neither side, or the limit rests on something unstated. */
  OPEN,
  BEYOND;

  Held worse(Held other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
