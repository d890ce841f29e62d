package org.brakerules.harness.cases;

import java.util.HashSet;
import java.util.Set;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.trial.TrialCase;
import org.brakerules.trial.TrialRules;

/**
 * A case that a changed rule base is asked.
 *
 * @param ruleCase the case
 * @param job its job
 * @param soundAxle the job of the sound axle it is compared with
 */
public record CaseOnTrial(RuleCase ruleCase, BrakeJob job, BrakeJob soundAxle)
    implements TrialCase {

  /** Reads the jobs of a case once. */
  public static CaseOnTrial of(RuleCase ruleCase) {
    return new CaseOnTrial(ruleCase, ruleCase.job().read(), ruleCase.soundAxle().read());
  }

  @Override
  public String component() {
    return ruleCase.component();
  }

  @Override
  public String name() {
    return ruleCase.name();
  }

  @Override
  public Set<String> rules() {
    Set<String> rules = new HashSet<>(ruleCase.expected().fires());
    rules.addAll(ruleCase.expected().near());
    rules.addAll(ruleCase.expected().speaks().keySet());
    return rules;
  }

  @Override
  public boolean isAsExpected(TrialRules rules) {
    return new Comparing(ruleCase.expected(), Answers.of(rules), job, rules.decide(job))
        .mismatches(() -> rules.decideOnce(soundAxle))
        .isEmpty();
  }
}
