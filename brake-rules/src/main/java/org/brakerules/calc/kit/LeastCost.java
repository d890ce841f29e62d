package org.brakerules.calc.kit;

/**
 * What it costs at least to cover what remains with the kits not yet decided on.
 *
 * <p>A kit covers no more pieces than it brings of what remains. So each piece carries at least the
 * smallest share of a price, and of a kit, that any kit with it has; the shares of all pieces
 * together are never more than a real choice costs.
 */
final class LeastCost {

  /** Shares of a kit are counted in millionths, cut off. */
  private static final long KIT = 1_000_000;

  private final KitField field;
  private final int[][] contents;
  private final long[] prices;

  LeastCost(KitField field) {
    this.field = field;
    this.contents = field.contents();
    this.prices = field.prices();
  }

  /** At least this, with the kits from one on. */
  Cost from(int first, int[] remaining) {
    int[] covers = covers(first, remaining);
    long price = 0;
    long shares = 0;
    boolean anyPriced = false;
    for (int item = 0; item < remaining.length; item++) {
      if (remaining[item] > 0) {
        long cheapest = Long.MAX_VALUE;
        long fullest = 1;
        for (int kit = first; kit < contents.length; kit++) {
          if (contents[kit][item] > 0) {
            cheapest = Math.min(cheapest, remaining[item] * prices[kit] / covers[kit]);
            fullest = Math.max(fullest, covers[kit]);
            anyPriced |= field.isPriced(kit);
          }
        }
        price += cheapest == Long.MAX_VALUE ? 0 : cheapest;
        shares += remaining[item] * KIT / fullest;
      }
    }
    int kits = (int) ((shares + KIT - 1) / KIT);
    return new Cost(anyPriced ? 0 : kits, price, kits, 0);
  }

  /** Of each kit, how many pieces of what remains it covers. */
  private int[] covers(int first, int[] remaining) {
    int[] covers = new int[contents.length];
    for (int kit = first; kit < contents.length; kit++) {
      for (int item = 0; item < remaining.length; item++) {
        covers[kit] += Math.min(contents[kit][item], remaining[item]);
      }
    }
    return covers;
  }

  /** At least this many of a kit, for what no later kit brings. */
  int fewest(int kit, int[] remaining) {
    int fewest = 0;
    for (int item = 0; item < remaining.length; item++) {
      if (remaining[item] > 0 && contents[kit][item] > 0 && isLast(kit, item)) {
        fewest = Math.max(fewest, ceiling(remaining[item], contents[kit][item]));
      }
    }
    return fewest;
  }

  private boolean isLast(int kit, int item) {
    for (int later = kit + 1; later < contents.length; later++) {
      if (contents[later][item] > 0) {
        return false;
      }
    }
    return true;
  }

  static int ceiling(int dividend, int divisor) {
    return (dividend + divisor - 1) / divisor;
  }
}
