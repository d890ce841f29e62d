package org.brakerules.model.job;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What an odometer or hub odometer showed.
 *
 * @param distance the distance, not below zero
 * @param unit {@code km} or {@code mi}
 */
public record Odometer(BigDecimal distance, String unit) {

  /** How it is written, such as {@code 401200 km}. */
  public static final Pattern FORM = Pattern.compile("([0-9]{1,8}(?:\\.[0-9])?) (km|mi)");

  /**
   * Checks the reading.
   *
   * @throws IllegalArgumentException if it is below zero or the unit is another
   */
  public Odometer {
    if (!FORM.matcher(distance.toPlainString() + " " + unit).matches()) {
      throw new IllegalArgumentException(
          "No odometer shows " + distance.toPlainString() + " " + unit + "; write 401200 km.");
    }
  }

  /**
   * Reads an odometer such as {@code 401200 km}.
   *
   * @throws IllegalArgumentException if the text is none
   */
  public static Odometer parse(String text) {
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      throw new IllegalArgumentException("No odometer shows " + text + "; write 401200 km.");
    }
    return new Odometer(new BigDecimal(form.group(1)), form.group(2));
  }

  @Override
  public String toString() {
    return distance.toPlainString() + " " + unit;
  }
}
