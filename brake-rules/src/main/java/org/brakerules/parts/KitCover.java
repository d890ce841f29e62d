package org.brakerules.parts;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.kit.KitShelf;

/**
 * The parts list of a job with the kits that cover it.
 *
 * @param parts the parts list
 * @param shelf the kits there were to choose from
 * @param axles the cover of each axle that needs anything
 */
public record KitCover(PartsList parts, KitShelf shelf, List<AxleCover> axles) {

  /** Keeps its own copy of the list. */
  public KitCover {
    axles = List.copyOf(axles);
  }

  /** What the kits with a price cost together, over all axles; empty if none has one. */
  public Optional<BigDecimal> price() {
    return axles.stream().flatMap(axle -> axle.price().stream()).reduce(BigDecimal::add);
  }
}
