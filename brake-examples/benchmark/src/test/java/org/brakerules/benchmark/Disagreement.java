package org.brakerules.benchmark;

import java.util.Locale;
import java.util.Optional;
import org.brakerules.benchmark.oracle.OracleDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;

/**
 * A part on which rule base and oracle do not agree.
 *
 * @param job the job
 * @param part the part
 * @param rules what the rule base says; empty if it leaves the part out
 * @param oracle what the oracle says; empty if it leaves the part out
 */
record Disagreement(
    BrakeJob job, Place part, Optional<OracleDecision> rules, Optional<OracleDecision> oracle) {

  /** The kind of part and the two answers: what makes two disagreements one finding. */
  String kind() {
    return part.kind().id() + ": rules " + shown(rules) + ", oracle " + shown(oracle);
  }

  private static String shown(Optional<OracleDecision> decision) {
    return decision
        .map(one -> one.disposition().name().toLowerCase(Locale.ROOT) + held(one))
        .orElse("nothing");
  }

  private static String held(OracleDecision decision) {
    return decision.hold() ? " on hold" : "";
  }
}
