package org.brakerules.calc;

import org.brakerules.model.quantity.Quantity;

/**
 * A quantity that comes from a model of the brake. It is good for comparing one brake with another
 * and before with after. It is no reading, and nothing that takes a reading takes it.
 *
 * @param value the value
 */
public record Estimate<Q extends Quantity<Q>>(Q value) {

  /** The value with "about" before it. */
  @Override
  public String toString() {
    String text = value.toString();
    return text.startsWith("about ") ? text : "about " + text;
  }
}
