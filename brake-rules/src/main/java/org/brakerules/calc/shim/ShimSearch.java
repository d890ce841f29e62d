package org.brakerules.calc.shim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.brakerules.model.quantity.Length;

/**
 * The stacks that shims can make, each thickness by its best stack.
 *
 * <p>Pieces are tried thickest first, so of two stacks of one thickness the better stays the better
 * whatever is added to both, and the worse is dropped at once. That keeps the search exact and
 * small.
 */
final class ShimSearch {

  private static final long MOST_STACKS = 2_000_000;

  private final List<ShimPiece> pieces;
  private final long thinnest;
  private final long thickest;
  private long tried;

  private ShimSearch(List<ShimPiece> pieces, long thinnest, long thickest) {
    this.pieces = pieces;
    this.thinnest = thinnest;
    this.thickest = thickest;
  }

  /** Searches the stacks that leave a gap inside its band. */
  static ShimSearch of(Collection<ShimPiece> pieces, Length gap, EndPlayBand band) {
    long thickest = gap.minus(band.min()).nanometres();
    return new ShimSearch(usable(pieces, thickest), gap.minus(band.max()).nanometres(), thickest);
  }

  /** Of each kind no more pieces than go into the gap, thickest first. */
  private static List<ShimPiece> usable(Collection<ShimPiece> pieces, long room) {
    return pieces.stream().collect(Collectors.groupingBy(piece -> piece)).values().stream()
        .flatMap(alike -> alike.stream().limit(room / alike.get(0).thickness().nanometres()))
        .sorted(ShimPiece.THICKEST_FIRST)
        .toList();
  }

  /** Whether the stock makes more stacks than can be tried in about a second. */
  boolean isTooLarge() {
    return tried > MOST_STACKS;
  }

  /**
   * The best of the stacks that leave an end play inside the band; empty if there is none, or the
   * stock is too large to search.
   */
  Optional<ShimStack> best() {
    for (int count = 0; count <= pieces.size() && !isTooLarge(); count++) {
      Optional<ShimStack> best = best(count);
      if (best.isPresent()) {
        return best;
      }
    }
    return Optional.empty();
  }

  /** The best stack of so many pieces. */
  private Optional<ShimStack> best(int count) {
    List<Map<Long, ShimStack>> byCount = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      byCount.add(new HashMap<>());
    }
    byCount.get(0).put(0L, ShimStack.EMPTY);
    for (ShimPiece piece : pieces) {
      for (int more = count; more > 0; more--) {
        add(piece, byCount.get(more - 1), byCount.get(more), count - more);
      }
    }
    return byCount.get(count).values().stream()
        .filter(stack -> stack.nanometres() >= thinnest)
        .min(
            Comparator.comparing(
                    (ShimStack stack) -> Math.abs(2 * stack.nanometres() - thinnest - thickest))
                .thenComparing(ShimStack.BETTER_FIRST));
  }

  /** What is too thick is left out, and what the pieces to come, none thicker, cannot fill. */
  private void add(
      ShimPiece piece, Map<Long, ShimStack> fewer, Map<Long, ShimStack> more, int toCome) {
    long thickness = piece.thickness().nanometres();
    tried += fewer.size();
    if (isTooLarge()) {
      return;
    }
    for (ShimStack stack : fewer.values()) {
      long together = stack.nanometres() + thickness;
      if (together <= thickest && together + toCome * thickness >= thinnest) {
        more.merge(together, stack.with(piece), ShimStack::better);
      }
    }
  }

  /** Where no stack is inside the band, the thickest of those that leave too much end play. */
  ShimStack thickestBelowBand() {
    TreeMap<Long, ShimStack> byThickness = new TreeMap<>();
    byThickness.put(0L, ShimStack.EMPTY);
    for (ShimPiece piece : isTooLarge() ? List.<ShimPiece>of() : pieces) {
      tried += byThickness.size();
      long room = thickest - piece.thickness().nanometres();
      for (ShimStack stack : List.copyOf(byThickness.headMap(room, true).values())) {
        ShimStack more = stack.with(piece);
        byThickness.merge(more.nanometres(), more, ShimStack::better);
      }
    }
    return byThickness.lastEntry().getValue();
  }
}
