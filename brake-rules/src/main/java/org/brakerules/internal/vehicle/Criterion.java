package org.brakerules.internal.vehicle;

import java.util.Optional;
import java.util.Set;
import org.brakerules.model.decision.Source;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Share;

/**
 * One published criterion for a whole vehicle, as its table writes it.
 *
 * @param id its id
 * @param ruleSet the rule set it belongs to; empty if it is named under every one
 * @param measure what it counts or compares
 * @param title its title
 * @param says what it says
 * @param ask whom to ask, and what
 * @param source where it was read
 */
record Criterion(
    String id,
    Optional<RuleSet> ruleSet,
    Measure measure,
    String title,
    String says,
    String ask,
    Source source) {

  /** What a criterion counts or compares. */
  sealed interface Measure permits DefectiveShare, SteerAxleAlike {}

  /**
   * A share of the brakes beyond their stroke limits.
   *
   * @param share the share that reaches the criterion
   * @param wholeFrom how far beyond its limit a stroke makes a whole defective brake
   * @param halves whether a stroke less far beyond makes half of one
   * @param others whether defects other than the stroke can make a brake defective
   */
  record DefectiveShare(Share share, Length wholeFrom, boolean halves, boolean others)
      implements Measure {}

  /**
   * What must be alike at both ends of a steering axle.
   *
   * @param matters in what
   */
  record SteerAxleAlike(Set<AxleMatter> matters) implements Measure {

    SteerAxleAlike {
      matters = Set.copyOf(matters);
    }
  }

  boolean holdsUnder(RuleSet jobs) {
    return ruleSet.map(jobs::equals).orElse(true);
  }
}
