package org.brakerules.harness.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.harness.batch.GeneralRules.GeneralRule;
import org.brakerules.model.decision.Disposition;

/**
 * What a batch came to.
 *
 * @param rules whose rules the reasons name
 * @param tally the numbers
 */
record Summary(BrakeRules rules, Tally tally) {

  /** As many reasons as a person reads. */
  static final int MOST_REASONS = 10;

  /**
   * A reason and how many parts have it.
   *
   * @param rule the id of the rule
   * @param title its title; empty if the rule base has no such rule
   * @param parts how many parts
   */
  record Frequent(String rule, String title, long parts) {}

  /** The most frequent reasons for anything but reuse, the most frequent first. */
  List<Frequent> reasons() {
    return tally.reasons().stream()
        .filter(reason -> !reason.getKey().equals(GeneralRules.GOES_BACK))
        .limit(MOST_REASONS)
        .map(this::frequent)
        .toList();
  }

  private Frequent frequent(Map.Entry<String, Long> reason) {
    return new Frequent(reason.getKey(), title(reason.getKey()), reason.getValue());
  }

  private String title(String id) {
    Optional<String> general =
        GeneralRules.ALL.stream()
            .filter(rule -> rule.id().equals(id))
            .map(GeneralRule::title)
            .findFirst();
    return general
        .or(
            () ->
                rules.rules().stream()
                    .filter(rule -> rule.id().equals(id))
                    .map(Rule::title)
                    .findFirst())
        .orElse("");
  }

  /** The share of parts that are undecided. */
  BigDecimal undecidedPercent() {
    return percent(tally.count(Disposition.UNDECIDED), tally.parts().total());
  }

  /** A share in percent, to a tenth; zero of nothing. */
  static BigDecimal percent(long some, long all) {
    return all == 0
        ? new BigDecimal("0.0")
        : BigDecimal.valueOf(some)
            .multiply(BigDecimal.valueOf(100))
            .divide(BigDecimal.valueOf(all), 1, RoundingMode.HALF_UP);
  }
}
