package org.brakerules.harness.cases;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.trial.TrialRules;

/**
 * A rule base that answers cases: the standard one, or one on trial.
 *
 * @param decisions decides a job
 * @param decisionsKept decides a job that many cases are compared with
 * @param reasons says which condition kept a rule from firing on a job; empty if it fires
 * @param rules the ids of all rules
 */
public record Answers(
    Function<BrakeJob, JobDecision> decisions,
    Function<BrakeJob, JobDecision> decisionsKept,
    BiFunction<BrakeJob, String, Optional<String>> reasons,
    Set<String> rules) {

  /** The standard rule base. */
  public static Answers of(BrakeRules rules) {
    Map<BrakeJob, JobDecision> kept = new ConcurrentHashMap<>();
    return new Answers(
        rules::decide,
        job -> kept.computeIfAbsent(job, rules::decide),
        rules::whyNot,
        rules.rules().stream().map(Rule::id).collect(Collectors.toSet()));
  }

  /** A rule base on trial. */
  public static Answers of(TrialRules rules) {
    return new Answers(
        rules::decide,
        rules::decideOnce,
        rules::whyNot,
        rules.ruleIds().collect(Collectors.toSet()));
  }

  JobDecision decide(BrakeJob job) {
    return decisions.apply(job);
  }

  JobDecision decideOnce(BrakeJob job) {
    return decisionsKept.apply(job);
  }

  Optional<String> whyNot(BrakeJob job, String rule) {
    return reasons.apply(job, rule);
  }
}
