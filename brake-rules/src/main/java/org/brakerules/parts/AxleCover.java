package org.brakerules.parts;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Which kits cover what one axle needs.
 *
 * @param unit the unit of the combination; empty where there is one unit only
 * @param axle the axle counted from the front of its unit
 * @param kits the kits to buy, in the order of the shelf
 * @param covered what the kits bring of what is to be ordered
 * @param loose what no kit of the shelf brings, to be ordered by itself
 * @param countAndConfirm what is to be ordered and whose number is not certain: the cover holds for
 *     the pieces known of
 * @param shortfalls where a chosen kit holds less than what it is packed for needs
 * @param salvage what must come off the worn shoes before these leave, since no chosen kit brings
 *     it
 * @param spared what need not come off the worn shoes, since the kits bring it
 * @param leftOver what the kits bring and nothing needs
 * @param frictionCode the friction code of the linings in the kits; empty if none has one
 * @param price what the kits with a price cost together; empty if none has one
 * @param unpriced how many of the kits have no price
 * @param exact whether no better choice exists on the shelf
 * @param statement in one sentence how far to trust the choice, and what it honours
 */
public record AxleCover(
    String unit,
    int axle,
    List<ChosenKit> kits,
    List<Counted> covered,
    List<Counted> loose,
    List<TotalLine> countAndConfirm,
    List<Shortfall> shortfalls,
    List<Counted> salvage,
    List<Counted> spared,
    List<Counted> leftOver,
    String frictionCode,
    Optional<BigDecimal> price,
    int unpriced,
    boolean exact,
    String statement) {

  /** Keeps its own copies of the lists. */
  public AxleCover {
    kits = List.copyOf(kits);
    covered = List.copyOf(covered);
    loose = List.copyOf(loose);
    countAndConfirm = List.copyOf(countAndConfirm);
    shortfalls = List.copyOf(shortfalls);
    salvage = List.copyOf(salvage);
    spared = List.copyOf(spared);
    leftOver = List.copyOf(leftOver);
  }

  /** The axle as paths name it, such as {@code tractor/axle2}. */
  public String name() {
    return unit.isEmpty() ? "axle" + axle : unit + "/axle" + axle;
  }
}
