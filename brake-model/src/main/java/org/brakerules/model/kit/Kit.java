package org.brakerules.model.kit;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * What is bought as one: a kit, or a loose part.
 *
 * @param id the shop's own name for it, such as {@code HY-RELINE-D}
 * @param title what it is, in words
 * @param reach how much of a vehicle it is packed for
 * @param contents how many of each item it holds, by the id of the item
 * @param price what one costs, in the currency of its shelf; empty if not known
 * @param frictionCode the friction code of the linings in it, two letters such as {@code FF}; empty
 *     if there are none or it is not known
 */
public record Kit(
    String id,
    String title,
    KitReach reach,
    Map<String, Integer> contents,
    Optional<BigDecimal> price,
    String frictionCode) {

  /** The most pieces of one item in a kit. */
  public static final int MOST_PIECES = 99;

  /** The highest price. */
  public static final BigDecimal HIGHEST_PRICE = new BigDecimal(1_000_000);

  private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");
  private static final Pattern CODE = Pattern.compile("|[A-Z]{2}");

  /**
   * Keeps its own copy of the contents, in the order of the ids.
   *
   * @throws IllegalArgumentException if the id is no name, if nothing is in it, if a count is not 1
   *     to 99, if the price is below zero or above a million, or if the code is not two letters
   */
  public Kit {
    contents = Collections.unmodifiableMap(new TreeMap<>(contents));
    if (!ID.matcher(id).matches()) {
      throw new IllegalArgumentException(
          "No name of a kit: \""
              + id
              + "\"; write letters, digits, dots, hyphens and underscores, 40 at most");
    }
    if (contents.isEmpty()) {
      throw new IllegalArgumentException("Nothing is in kit " + id + ".");
    }
    if (contents.values().stream().anyMatch(count -> count < 1 || count > MOST_PIECES)) {
      throw new IllegalArgumentException("A count of kit " + id + " is not 1 to " + MOST_PIECES);
    }
    if (price.filter(one -> one.signum() < 0 || one.compareTo(HIGHEST_PRICE) > 0).isPresent()) {
      throw new IllegalArgumentException("The price of kit " + id + " is not 0 to 1000000.");
    }
    if (!CODE.matcher(frictionCode).matches()) {
      throw new IllegalArgumentException(
          "No friction code: \"" + frictionCode + "\"; write its two letters, such as FF");
    }
  }

  /** How many pieces are in it. */
  public int pieces() {
    return contents.values().stream().mapToInt(Integer::intValue).sum();
  }
}
