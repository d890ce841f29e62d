package org.brakerules.model.layout;

import java.util.Optional;
import java.util.regex.Pattern;
import org.brakerules.model.part.AtMost;
import org.brakerules.model.quantity.Length;

/**
 * The size of a brake chamber. Family, type, stroke class and rated stroke together choose the
 * stroke limit; the outside diameter alone does not.
 *
 * @param family the family
 * @param type the type as marked, such as {@code 30} or {@code B}; empty if not stated
 * @param strokeClass the stroke class
 * @param ratedStroke the rated stroke as marked; empty if not stated
 * @param springType the type of the spring side as marked, such as {@code 30}; empty if there is
 *     none or it is not stated
 */
public record ChamberSize(
    ChamberFamily family,
    String type,
    StrokeClass strokeClass,
    @AtMost("10 in") Optional<Length> ratedStroke,
    String springType) {

  private static final Pattern TYPE = Pattern.compile("[0-9]{0,2}|[A-Z]");

  /** Nothing is known of the chamber. */
  public static final ChamberSize UNKNOWN =
      new ChamberSize(ChamberFamily.UNKNOWN, "", StrokeClass.UNKNOWN, Optional.empty(), "");

  /**
   * Refuses a type that no chamber is marked with: a mistyped one would pass for a type that the
   * law does not list.
   *
   * @throws IllegalArgumentException if a type is neither one or two digits nor one capital letter
   */
  public ChamberSize {
    requireType(type);
    requireType(springType);
  }

  private static void requireType(String type) {
    if (!TYPE.matcher(type).matches()) {
      throw new IllegalArgumentException(
          "No type of a chamber: \"" + type + "\"; write it as marked, such as 30 or B");
    }
  }
}
