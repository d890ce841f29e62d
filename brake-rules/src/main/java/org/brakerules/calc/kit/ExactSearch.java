package org.brakerules.calc.kit;

import java.util.Arrays;

/**
 * Branch and bound over how many of each kit are taken, kit by kit in the order offered, most
 * first.
 *
 * <p>Everything that some kit brings is covered, since any kit may be taken any number of times. A
 * branch is left when what it has cost and must at least cost cannot beat the best choice so far.
 */
final class ExactSearch {

  /** Some seconds of work; no shelf of real kits comes near it. */
  private static final long MOST_STEPS = 20_000_000;

  private final KitField field;
  private final int[][] contents;
  private final long[] prices;
  private final LeastCost least;
  private final int[] counts;
  private int[] best;
  private Cost bestCost = Cost.WORST;
  private long steps;

  ExactSearch(KitField field) {
    this.field = field;
    this.contents = field.contents();
    this.prices = field.prices();
    this.least = new LeastCost(field);
    this.counts = new int[field.kits()];
    this.best = counts;
  }

  /** How many of each kit the best choice takes. */
  int[] best() {
    startFrom(GreedySearch.counts(field));
    branch(0, field.required(), Cost.NONE);
    return best;
  }

  /** Whether the search gave up before its end. */
  boolean isCutShort() {
    return steps > MOST_STEPS;
  }

  /** A good choice to begin with leaves more branches at once; an equally good one replaces it. */
  private void startFrom(int[] good) {
    best = good;
    Cost cost = Cost.NONE;
    for (int kit = 0; kit < good.length; kit++) {
      cost = cost.plus(good[kit], prices[kit], field.isPriced(kit));
    }
    bestCost = cost.withLeftOver(field.leftOver(good) + 1);
  }

  private void branch(int kit, int[] remaining, Cost cost) {
    steps++;
    if (isCutShort() || cost.plus(least.from(kit, remaining)).compareTo(bestCost) >= 0) {
      return;
    }
    if (kit == counts.length) {
      keep(cost.withLeftOver(field.leftOver(counts)));
      return;
    }
    int fewest = least.fewest(kit, remaining);
    for (int count = most(kit, remaining); count >= fewest; count--) {
      counts[kit] = count;
      branch(
          kit + 1,
          after(kit, count, remaining),
          cost.plus(count, prices[kit], field.isPriced(kit)));
    }
    counts[kit] = 0;
  }

  private void keep(Cost cost) {
    if (cost.compareTo(bestCost) < 0) {
      bestCost = cost;
      best = Arrays.copyOf(counts, counts.length);
    }
  }

  /** More than this many of a kit bring nothing that is still to be covered. */
  private int most(int kit, int[] remaining) {
    int most = 0;
    for (int item = 0; item < remaining.length; item++) {
      int each = contents[kit][item];
      if (each > 0 && remaining[item] > 0) {
        most = Math.max(most, LeastCost.ceiling(remaining[item], each));
      }
    }
    return most;
  }

  private int[] after(int kit, int count, int[] remaining) {
    int[] after = remaining.clone();
    for (int item = 0; item < after.length; item++) {
      after[item] = Math.max(0, after[item] - count * contents[kit][item]);
    }
    return after;
  }
}
