package org.brakerules.harness;

/** How many of a thing there are, in words. */
public final class Counted {

  private Counted() {}

  /**
   * A number and its noun, such as {@code 1 case} or {@code 0 cases}.
   *
   * @param count how many there are
   * @param one what one of them is, to which an s makes several
   */
  public static String of(long count, String one) {
    return of(count, one, one + "s");
  }

  /**
   * A number and the word that goes with it, such as {@code 1 goes back} or {@code 3 go back}.
   *
   * @param count how many there are
   * @param one the word for one
   * @param several the word for none and for several
   */
  public static String of(long count, String one, String several) {
    return count + " " + (count == 1 ? one : several);
  }
}
