package org.brakerules.parts;

import java.math.BigDecimal;
import java.util.function.Function;
import org.brakerules.model.kit.KitShelf;

/** Prices as they are written, with every decimal of their currency. */
final class Prices {

  private Prices() {}

  static Function<BigDecimal, String> in(KitShelf shelf) {
    int decimals = shelf.currency().map(KitShelf::decimals).orElse(0);
    return price ->
        price.setScale(Math.max(decimals, price.stripTrailingZeros().scale())).toPlainString();
  }
}
