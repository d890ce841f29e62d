package org.brakerules.calc.shim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.brakerules.model.quantity.Length;

/**
 * A stack of shims under search.
 *
 * @param pieces the shims, thickest first
 * @param nanometres their thickness together
 * @param salvaged how many came off a brake
 */
record ShimStack(List<ShimPiece> pieces, long nanometres, int salvaged) {

  static final ShimStack EMPTY = new ShimStack(List.of(), 0, 0);

  /** Fewest pieces, then most salvaged, then the thickest pieces. */
  static final Comparator<ShimStack> BETTER_FIRST =
      Comparator.comparing(ShimStack::count)
          .thenComparing(stack -> -stack.salvaged())
          .thenComparing(ShimStack::byPieces);

  int count() {
    return pieces.size();
  }

  ShimStack better(ShimStack other) {
    return BETTER_FIRST.compare(this, other) <= 0 ? this : other;
  }

  /** The stack with one shim more, which is no thicker than the others. */
  ShimStack with(ShimPiece piece) {
    List<ShimPiece> more = new ArrayList<>(pieces);
    more.add(piece);
    return new ShimStack(
        List.copyOf(more),
        nanometres + piece.thickness().nanometres(),
        salvaged + (piece.isSalvaged() ? 1 : 0));
  }

  /** What it leaves of a gap. */
  Length endPlay(Length gap) {
    return new Length(gap.nanometres() - nanometres, gap.unit());
  }

  private static int byPieces(ShimStack one, ShimStack other) {
    for (int i = 0; i < one.pieces.size(); i++) {
      int order = ShimPiece.THICKEST_FIRST.compare(one.pieces.get(i), other.pieces.get(i));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }
}
