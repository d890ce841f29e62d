package org.brakerules.parts;

import java.util.List;
import java.util.stream.Stream;

/**
 * How many pieces.
 *
 * @param pieces as many as are known of; zero where the number is open
 * @param confirm why to count and confirm, each reason once; empty if the number is certain
 */
public record Amount(int pieces, List<String> confirm) {

  /** No piece at all. */
  public static final Amount NONE = new Amount(0, List.of());

  private static final String COUNT = "count and confirm";

  /** Keeps its own copy of the list. */
  public Amount {
    confirm = List.copyOf(confirm);
  }

  /** Whether the number is certain. */
  public boolean isCertain() {
    return confirm.isEmpty();
  }

  /** Both together; what is to be confirmed of one is to be confirmed of both. */
  public Amount plus(Amount other) {
    return new Amount(
        pieces + other.pieces,
        Stream.concat(confirm.stream(), other.confirm.stream()).distinct().toList());
  }

  /** The number in words, such as {@code 2}, {@code 2, count and confirm}. */
  public String inWords() {
    if (isCertain()) {
      return Integer.toString(pieces);
    }
    return pieces == 0 ? COUNT : pieces + ", " + COUNT;
  }
}
