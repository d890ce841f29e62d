package org.brakerules.parts;

import java.math.BigDecimal;
import java.util.Optional;
import org.brakerules.model.kit.Kit;

/**
 * A kit to buy.
 *
 * @param kit the kit
 * @param count how many of it
 */
public record ChosenKit(Kit kit, int count) {

  /** What they cost together; empty if the kit has no price. */
  public Optional<BigDecimal> price() {
    return kit.price().map(each -> each.multiply(BigDecimal.valueOf(count)));
  }
}
