package org.brakerules.linter.internal.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The days on which a row holds.
 *
 * @param from the first; {@link LocalDate#MIN} if it always did
 * @param to the last; {@link LocalDate#MAX} if it still does
 */
public record Period(LocalDate from, LocalDate to) {

  /** Reads two cells; empty if one of them is no date. */
  public static Optional<Period> read(String from, String to) {
    Optional<LocalDate> first = from.isEmpty() ? Optional.of(LocalDate.MIN) : date(from);
    Optional<LocalDate> last = to.isEmpty() ? Optional.of(LocalDate.MAX) : date(to);
    return first.flatMap(start -> last.map(end -> new Period(start, end)));
  }

  /** A day as year, month and day; empty if it is none. */
  public static Optional<LocalDate> date(String written) {
    try {
      return Optional.of(LocalDate.parse(written));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** Whether it ends before it begins. */
  public boolean isBackwards() {
    return from.isAfter(to);
  }

  /** Whether a day belongs to both. */
  public boolean overlaps(Period other) {
    return !from.isAfter(other.to) && !other.from.isAfter(to);
  }

  /** Whether days lie between the end of this one and the beginning of the other. */
  public boolean leavesGapBefore(Period later) {
    return to.isBefore(later.from) && to.plusDays(1).isBefore(later.from);
  }
}
