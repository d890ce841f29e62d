package org.brakerules.model.decision;

import org.brakerules.model.quantity.Quantity;

/**
 * The limit a reading was held against.
 *
 * @param id the id of the limit, such as {@code camshaft-bushing.radial-play.max}
 * @param comparison the side on which a reading passes
 * @param value the value
 * @param written the value as its table or document writes it, such as {@code 0.020 in}
 * @param source where the value comes from
 */
public record LimitInForce(
    String id, Comparison comparison, Quantity<?> value, String written, Source source) {

  /** The limit in a sentence, such as {@code at most 0.020 in}. */
  public String inWords() {
    return comparison.inWords() + " " + written;
  }
}
