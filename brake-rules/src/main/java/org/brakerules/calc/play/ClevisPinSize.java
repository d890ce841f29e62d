package org.brakerules.calc.play;

import java.util.List;
import org.brakerules.model.quantity.Length;

/**
 * A nominal size of clevis pin, as ASME B18.8.1-1994 gives it.
 *
 * @param nominal the size, such as {@code 1/2 in}
 * @param thinnest the thinnest shank of a new pin
 * @param thickest the thickest shank of a new pin
 * @param smallestCotterHole the least diameter of its cotter hole
 * @param largestCotterHole the largest diameter of its cotter hole
 * @param cotter the cotter pin for it, such as {@code 1/8 in}
 */
public record ClevisPinSize(
    Length nominal,
    Length thinnest,
    Length thickest,
    Length smallestCotterHole,
    Length largestCotterHole,
    Length cotter) {

  /** All sizes of the standard, the smallest first. */
  public static List<ClevisPinSize> all() {
    return ClevisPinTable.SIZES;
  }

  /**
   * The size of a nominal diameter.
   *
   * @throws IllegalArgumentException if the standard has no such size
   */
  public static ClevisPinSize of(Length nominal) {
    return all().stream()
        .filter(size -> size.nominal().equals(nominal))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "No clevis pin of "
                        + nominal
                        + "; there are "
                        + all().stream().map(size -> size.nominal().toString()).toList()));
  }
}
