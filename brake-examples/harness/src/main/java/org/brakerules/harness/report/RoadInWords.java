package org.brakerules.harness.report;

import java.util.Locale;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.job.RuleSet;

/** What the rule set says of a part on the road. */
final class RoadInWords {

  private RoadInWords() {}

  static String of(RoadAnswer answer, RuleSet ruleSet) {
    return "On the road under " + ruleSet + ": " + answer.name().toLowerCase(Locale.ROOT);
  }
}
