package org.brakerules.internal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.calc.shim.ShimPiece;
import org.brakerules.model.job.ShimsAtHand;

/** The shims at hand for a job: what one wheel end takes, the next cannot. */
final class ShimStock {

  private final List<ShimPiece> left = new ArrayList<>();
  private final List<String> takers = new ArrayList<>();

  ShimStock(List<ShimsAtHand> atHand) {
    for (ShimsAtHand some : atHand) {
      for (int i = 0; i < some.count(); i++) {
        left.add(new ShimPiece(some.thickness(), some.condition()));
      }
    }
  }

  List<ShimPiece> left() {
    return List.copyOf(left);
  }

  boolean isEmpty() {
    return left.isEmpty() && takers.isEmpty();
  }

  void take(List<ShimPiece> pieces, String taker) {
    if (!pieces.isEmpty()) {
      pieces.forEach(left::remove);
      takers.add(taker);
    }
  }

  /** Which wheel ends took shims before; empty if none did. */
  String takenBy() {
    return takers.stream().collect(Collectors.joining(" and "));
  }
}
