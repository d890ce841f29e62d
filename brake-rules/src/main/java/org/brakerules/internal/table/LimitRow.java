package org.brakerules.internal.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.quantity.Quantity;

/**
 * A limit with what its row selects and reads.
 *
 * @param limit the limit
 * @param selector the parts it is for
 * @param property the property it limits
 * @param ratedShare the share of the rated stroke that the limit is; empty if it is none
 * @param law the rule set whose law it is; empty if it is no law of any rule set known here
 * @param byComparison whether a rule set made it of a row of all by holding that on another side
 * @param ofEveryBrake the limit where its value hangs on nothing of the brake; empty if it does, or
 *     if the table has no value
 */
public record LimitRow(
    Limit limit,
    Selector selector,
    Property property,
    Optional<RatedShare> ratedShare,
    Optional<RuleSet> law,
    boolean byComparison,
    Optional<LimitInForce> ofEveryBrake) {

  /** A row as it was read. */
  LimitRow(
      Limit limit,
      Selector selector,
      Property property,
      Optional<RatedShare> ratedShare,
      Optional<RuleSet> law,
      boolean byComparison) {
    this(
        limit,
        selector,
        property,
        ratedShare,
        law,
        byComparison,
        limit.value().map(value -> inForce(limit, value, limit.written())));
  }

  LimitRow exceptUnder(List<RuleSet> ruleSets) {
    return new LimitRow(
        limit.exceptUnder(ruleSets), selector, property, ratedShare, law, byComparison);
  }

  LimitRow held(Limit as, Optional<RuleSet> lawOf) {
    return new LimitRow(as, selector, property, ratedShare, lawOf, true);
  }

  /** The limit as it holds for a brake; empty if the table has no value for it. */
  public Optional<LimitInForce> inForce(Layout layout) {
    if (ofEveryBrake.isPresent()) {
      return ofEveryBrake;
    }
    return ratedShare
        .flatMap(share -> share.of(layout))
        .map(
            value ->
                inForce(
                    limit,
                    value,
                    value
                        + ", which is "
                        + limit
                            .written()
                            .replace("layout." + RatedShare.ATTRIBUTE, "the rated stroke")));
  }

  /** What must be stated of a part before it is known whether the row is for it, and its value. */
  public List<String> unstated(Subject subject) {
    List<String> bySelector = selector.unstated(subject);
    if (ratedShare.isEmpty() || subject.layout().chamber().ratedStroke().isPresent()) {
      return bySelector;
    }
    List<String> unstated = new ArrayList<>(bySelector);
    unstated.add("layout." + RatedShare.ATTRIBUTE);
    return unstated;
  }

  private static LimitInForce inForce(Limit limit, Quantity<?> value, String written) {
    return new LimitInForce(limit.id(), limit.comparison(), value, written, limit.source());
  }
}
