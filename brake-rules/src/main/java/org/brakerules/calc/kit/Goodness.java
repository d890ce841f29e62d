package org.brakerules.calc.kit;

import java.math.BigDecimal;
import java.util.Comparator;

/**
 * How good a choice of kits is; the better one comes first.
 *
 * @param loose how many required pieces no kit brings
 * @param unpriced how many of the kits have no price
 * @param price what the others cost together
 * @param kits how many kits there are
 * @param leftOver how many of their pieces are of no use
 */
public record Goodness(int loose, int unpriced, BigDecimal price, int kits, int leftOver)
    implements Comparable<Goodness> {

  private static final Comparator<Goodness> ORDER =
      Comparator.comparingInt(Goodness::loose)
          .thenComparingInt(Goodness::unpriced)
          .thenComparing(Goodness::price)
          .thenComparingInt(Goodness::kits)
          .thenComparingInt(Goodness::leftOver);

  @Override
  public int compareTo(Goodness other) {
    return ORDER.compare(this, other);
  }
}
