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
 */
public record LimitRow(
    Limit limit,
    Selector selector,
    Property property,
    Optional<RatedShare> ratedShare,
    Optional<RuleSet> law,
    boolean byComparison) {

  LimitRow exceptUnder(List<RuleSet> ruleSets) {
    return new LimitRow(
        limit.exceptUnder(ruleSets), selector, property, ratedShare, law, byComparison);
  }

  LimitRow held(Limit as, Optional<RuleSet> lawOf) {
    return new LimitRow(as, selector, property, ratedShare, lawOf, true);
  }

  /** The limit as it holds for a brake; empty if the table has no value for it. */
  public Optional<LimitInForce> inForce(Layout layout) {
    if (limit.value().isPresent()) {
      return limit.value().map(value -> inForce(value, limit.written()));
    }
    return ratedShare
        .flatMap(share -> share.of(layout))
        .map(
            value ->
                inForce(
                    value,
                    value
                        + ", which is "
                        + limit
                            .written()
                            .replace("layout." + RatedShare.ATTRIBUTE, "the rated stroke")));
  }

  /** What must be stated of a part before it is known whether the row is for it, and its value. */
  public List<String> unstated(Subject subject) {
    List<String> unstated = new ArrayList<>(selector.unstated(subject));
    if (ratedShare.isPresent() && subject.layout().chamber().ratedStroke().isEmpty()) {
      unstated.add("layout." + RatedShare.ATTRIBUTE);
    }
    return unstated;
  }

  private LimitInForce inForce(Quantity<?> value, String written) {
    return new LimitInForce(limit.id(), limit.comparison(), value, written, limit.source());
  }
}
