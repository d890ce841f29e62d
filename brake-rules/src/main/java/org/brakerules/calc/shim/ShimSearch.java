package org.brakerules.calc.shim;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.brakerules.model.quantity.Length;

/**
 * Every thickness that shims can make together, each by its best stack.
 *
 * <p>Pieces are tried thickest first, so of two stacks of one thickness the better stays the better
 * whatever is added to both, and the worse is dropped at once. That keeps the search exact and
 * small.
 */
final class ShimSearch {

  private final long thinnest;
  private final long thickest;
  private final TreeMap<Long, ShimStack> byThickness = new TreeMap<>();

  private ShimSearch(long thinnest, long thickest) {
    this.thinnest = thinnest;
    this.thickest = thickest;
    byThickness.put(0L, ShimStack.EMPTY);
  }

  /** Searches the stacks that leave a gap inside its band. */
  static ShimSearch of(Collection<ShimPiece> pieces, Length gap, EndPlayBand band) {
    ShimSearch search =
        new ShimSearch(gap.minus(band.max()).nanometres(), gap.minus(band.min()).nanometres());
    pieces.stream().sorted(ShimPiece.THICKEST_FIRST).forEach(search::add);
    return search;
  }

  /** Thicker stacks are left out: no shim makes them thinner. */
  private void add(ShimPiece piece) {
    long room = thickest - piece.thickness().nanometres();
    for (ShimStack stack : List.copyOf(byThickness.headMap(room, true).values())) {
      ShimStack more = stack.with(piece);
      byThickness.merge(more.nanometres(), more, ShimStack::better);
    }
  }

  /** The best of the stacks that leave an end play inside the band. */
  Optional<ShimStack> best() {
    return inBand().values().stream()
        .min(
            Comparator.comparing(ShimStack::count)
                .thenComparing(stack -> Math.abs(2 * stack.nanometres() - thinnest - thickest))
                .thenComparing(ShimStack.BETTER_FIRST));
  }

  /** Where no stack is inside the band, the thickest of those that leave too much end play. */
  ShimStack thickestBelowBand() {
    return byThickness.lastEntry().getValue();
  }

  private Map<Long, ShimStack> inBand() {
    return byThickness.tailMap(thinnest, true);
  }
}
