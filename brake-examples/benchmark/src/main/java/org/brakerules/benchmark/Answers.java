package org.brakerules.benchmark;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.BrakeRules;
import org.brakerules.benchmark.oracle.Oracle;
import org.brakerules.benchmark.oracle.OracleCheck;
import org.brakerules.benchmark.oracle.OracleDecision;
import org.brakerules.benchmark.oracle.OracleReason;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;
import org.brakerules.random.AllChecks;

/** The answers of both to one job, put into one form. */
final class Answers {

  /** No promise is made on the order of the checks; two of one limit differ in their figure. */
  private static final Comparator<OracleCheck> BY_LIMIT =
      Comparator.comparing(OracleCheck::limit)
          .thenComparing(check -> check.figure().map(Object::toString).orElse(""));

  private Answers() {}

  /** The full answer of the rule base, but for its wording. */
  static Map<Place, OracleDecision> ofRules(BrakeJob job) {
    Map<Place, List<Check>> checks = AllChecks.of(job);
    Map<Place, OracleDecision> answers = new HashMap<>();
    for (Decision decision : BrakeRules.standard().decide(job).decisions()) {
      answers.put(
          decision.part(),
          new OracleDecision(
              decision.disposition(),
              decision.hold(),
              decision.reasons().stream()
                  .map(reason -> new OracleReason(reason.rule(), reason.verdict()))
                  .distinct()
                  .toList(),
              inOrder(
                  checks.getOrDefault(decision.part(), List.of()).stream()
                      .map(Answers::check)
                      .toList()),
              decision.needed().stream().map(Needed::point).sorted().toList()));
    }
    return answers;
  }

  /** The answer of the oracle. */
  static Map<Place, OracleDecision> ofOracle(BrakeJob job) {
    Map<Place, OracleDecision> answers = new HashMap<>();
    Oracle.decide(job)
        .forEach(
            (part, one) ->
                answers.put(
                    part,
                    new OracleDecision(
                        one.disposition(),
                        one.hold(),
                        one.reasons(),
                        inOrder(one.checks()),
                        one.open().stream().sorted().toList())));
    return answers;
  }

  private static List<OracleCheck> inOrder(List<OracleCheck> checks) {
    return checks.stream().sorted(BY_LIMIT).toList();
  }

  private static OracleCheck check(Check check) {
    return new OracleCheck(
        check.limitId(),
        check.status(),
        check.limit().map(LimitInForce::comparison),
        check.limit().map(LimitInForce::value),
        check.reading(),
        check.margin());
  }
}
