package org.brakerules.calc.kit;

import java.util.Comparator;

/**
 * What a choice costs, the weightier first.
 *
 * @param unpriced kits without a price
 * @param price the price of the others, in the smallest unit
 * @param kits kits
 * @param leftOver pieces of no use
 */
record Cost(int unpriced, long price, int kits, int leftOver) implements Comparable<Cost> {

  static final Cost NONE = new Cost(0, 0, 0, 0);
  static final Cost WORST =
      new Cost(Integer.MAX_VALUE, Long.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE);

  private static final Comparator<Cost> ORDER =
      Comparator.comparingInt(Cost::unpriced)
          .thenComparingLong(Cost::price)
          .thenComparingInt(Cost::kits)
          .thenComparingInt(Cost::leftOver);

  Cost plus(int count, long priceOfEach, boolean isPriced) {
    return new Cost(
        unpriced + (isPriced ? 0 : count), price + count * priceOfEach, kits + count, leftOver);
  }

  Cost plus(Cost other) {
    return new Cost(
        unpriced + other.unpriced,
        price + other.price,
        kits + other.kits,
        leftOver + other.leftOver);
  }

  Cost withLeftOver(int pieces) {
    return new Cost(unpriced, price, kits, pieces);
  }

  @Override
  public int compareTo(Cost other) {
    return ORDER.compare(this, other);
  }
}
