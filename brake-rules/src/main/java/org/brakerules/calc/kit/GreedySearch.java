package org.brakerules.calc.kit;

/** Takes the kit that covers most for its price, again and again, and then drops what is spare. */
final class GreedySearch {

  private final KitField field;
  private final int[][] contents;
  private final long[] prices;
  private final int[] remaining;
  private final int[] counts;

  private GreedySearch(KitField field) {
    this.field = field;
    this.contents = field.contents();
    this.prices = field.prices();
    this.remaining = field.required();
    this.counts = new int[field.kits()];
  }

  static int[] counts(KitField field) {
    GreedySearch search = new GreedySearch(field);
    for (int next = search.next(); next >= 0; next = search.next()) {
      search.take(next, 1);
    }
    search.dropSpare();
    return search.counts;
  }

  private int next() {
    int best = -1;
    for (int kit = 0; kit < contents.length; kit++) {
      if (covers(kit) > 0 && (best < 0 || isBetter(kit, best))) {
        best = kit;
      }
    }
    return best;
  }

  private boolean isBetter(int kit, int best) {
    if (field.isPriced(kit) != field.isPriced(best)) {
      return field.isPriced(kit);
    }
    long cost = prices[kit] * covers(best);
    long costOfBest = prices[best] * covers(kit);
    return cost == costOfBest ? covers(kit) > covers(best) : cost < costOfBest;
  }

  /** How many pieces still to be covered a kit brings. */
  private int covers(int kit) {
    int covers = 0;
    for (int item = 0; item < remaining.length; item++) {
      covers += Math.min(contents[kit][item], Math.max(0, remaining[item]));
    }
    return covers;
  }

  private void take(int kit, int more) {
    counts[kit] += more;
    for (int item = 0; item < remaining.length; item++) {
      remaining[item] -= more * contents[kit][item];
    }
  }

  private void dropSpare() {
    for (int kit = contents.length - 1; kit >= 0; kit--) {
      while (counts[kit] > 0 && isSpare(kit)) {
        take(kit, -1);
      }
    }
  }

  private boolean isSpare(int kit) {
    for (int item = 0; item < remaining.length; item++) {
      if (contents[kit][item] > -Math.min(0, remaining[item])) {
        return false;
      }
    }
    return true;
  }
}
