package org.brakerules.model.quantity;

/**
 * A text is not the quantity that was expected, or a sum is too large to be kept. The message says
 * what was found, what is wrong with it and what to write instead.
 */
public final class QuantityFormatException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;
  private static final int SHOWN = 60;

  private final String found;
  private final String wrong;
  private final String expected;

  QuantityFormatException(String found, Kind<?> kind, String wrong, String expected) {
    super(
        "\"%s\" is not %s: %s. Write %s."
            .formatted(shown(found), kind.withArticle(), wrong, expected));
    this.found = found;
    this.wrong = wrong;
    this.expected = expected;
  }

  /** What was written. */
  public String found() {
    return found;
  }

  /** What is wrong with it, for example {@code the unit is missing}. */
  public String wrong() {
    return wrong;
  }

  /** What to write instead, for example {@code "0.030 in" or "0.030 mm"}. */
  public String expected() {
    return expected;
  }

  private static String shown(String found) {
    String start = found.length() <= SHOWN ? found : found.substring(0, SHOWN) + "...";
    return start.replaceAll("\\p{Cntrl}", "?");
  }
}
