package org.brakerules.model.kit;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/**
 * The kits and loose parts a shop can choose from.
 *
 * @param name the shop's own name for the shelf; may be empty
 * @param currency the currency of every price, by ISO 4217; empty if no kit has a price
 * @param kits the kits, in the order in which equally good ones are taken
 */
public record KitShelf(String name, Optional<Currency> currency, List<Kit> kits) {

  /** The most kits a shelf can hold. */
  public static final int MOST_KITS = 500;

  /**
   * Keeps its own copy of the kits.
   *
   * @throws IllegalArgumentException if there are more than 500 kits, if two have one id, or if a
   *     price has no currency or more decimals than its currency
   */
  public KitShelf {
    kits = List.copyOf(kits);
    if (kits.size() > MOST_KITS) {
      throw new IllegalArgumentException("A shelf holds " + MOST_KITS + " kits at most.");
    }
    if (kits.stream().map(Kit::id).distinct().count() < kits.size()) {
      throw new IllegalArgumentException("Two kits of the shelf have one id.");
    }
    for (Kit kit : kits) {
      if (kit.price().isPresent()) {
        refuseUnlike(kit, kit.price().get(), currency);
      }
    }
  }

  private static void refuseUnlike(Kit kit, BigDecimal price, Optional<Currency> currency) {
    if (currency.isEmpty()) {
      throw new IllegalArgumentException("Kit " + kit.id() + " has a price and no currency.");
    }
    if (price.stripTrailingZeros().scale() > decimals(currency.get())) {
      throw new IllegalArgumentException(
          "The price of kit " + kit.id() + " has more decimals than " + currency.get() + ".");
    }
  }

  /** How many decimals a price in a currency has at most. */
  public static int decimals(Currency currency) {
    return Math.max(0, currency.getDefaultFractionDigits());
  }
}
