package org.brakerules.harness.changes;

import java.time.DateTimeException;
import java.time.LocalDate;

/** A day as the changelog writes it, such as {@code 2026-12-01}. */
final class CalendarDay {

  private CalendarDay() {}

  /** Whether a text is a day that the calendar has. */
  static boolean is(String text) {
    try {
      LocalDate.parse(text);
      return true;
    } catch (DateTimeException noDay) {
      return false;
    }
  }
}
