package org.brakerules.harness.cases;

import java.util.List;
import org.brakerules.BrakeRules;
import org.brakerules.JobRefusedException;
import org.brakerules.linter.cases.InvalidCaseException;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.InvalidJobException;
import org.brakerules.model.json.Problem;

/** Decides cases and compares the answer with what they expect. */
public final class CaseRunner {

  private final Answers rules;

  /** Runs cases against a rule base. */
  public CaseRunner(BrakeRules rules) {
    this(Answers.of(rules));
  }

  /** Runs cases against whatever answers. */
  public CaseRunner(Answers rules) {
    this.rules = rules;
  }

  /** Runs one case. A case that makes no valid job is not as expected. */
  public CaseResult run(RuleCase ruleCase) {
    return new CaseResult(ruleCase, mismatches(ruleCase));
  }

  private List<String> mismatches(RuleCase ruleCase) {
    try {
      BrakeJob job = ruleCase.job().read();
      JobDecision decision = rules.decide(job);
      BrakeJob soundAxle = ruleCase.soundAxle().read();
      return new Comparing(ruleCase.expected(), rules, job, decision)
          .mismatches(() -> rules.decideOnce(soundAxle));
    } catch (InvalidJobException invalid) {
      return invalid.problems().stream().map(Problem::message).toList();
    } catch (JobRefusedException refused) {
      return refused.problems();
    } catch (InvalidCaseException invalid) {
      return List.of(invalid.getMessage());
    }
  }
}
