package org.brakerules.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.brakerules.benchmark.oracle.OracleCheck;
import org.brakerules.benchmark.oracle.OracleDecision;
import org.brakerules.benchmark.oracle.OracleReason;
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

  /** The kind of part and the differences: what makes two disagreements one finding. */
  String kind() {
    if (rules.isEmpty() || oracle.isEmpty()) {
      return part.kind().id()
          + ": only "
          + (rules.isEmpty() ? "the oracle" : "the rules")
          + " has it";
    }
    List<String> differences = new ArrayList<>();
    different(Disagreement::outcome, differences);
    different(decision -> decision.reasons().stream().map(OracleReason::toString), differences);
    different(decision -> decision.checks().stream().map(Disagreement::shown), differences);
    different(decision -> decision.open().stream(), differences);
    if (differences.isEmpty()) {
      differences.add(exactly());
    }
    return part.kind().id() + ": " + String.join("; ", differences);
  }

  private void different(Function<OracleDecision, Stream<String>> of, List<String> differences) {
    List<String> here = of.apply(rules.orElseThrow()).toList();
    List<String> there = of.apply(oracle.orElseThrow()).toList();
    here.stream()
        .filter(one -> !there.contains(one))
        .forEach(one -> differences.add("rules " + one));
    there.stream()
        .filter(one -> !here.contains(one))
        .forEach(one -> differences.add("oracle " + one));
  }

  private static Stream<String> outcome(OracleDecision decision) {
    return Stream.of(
        decision.disposition().name().toLowerCase(Locale.ROOT)
            + (decision.hold() ? " on hold" : ""));
  }

  private static String shown(OracleCheck check) {
    return check.limit() + " " + check.status();
  }

  /** What differs only in order, or in the figures of a check. */
  private String exactly() {
    OracleDecision here = rules.orElseThrow();
    OracleDecision there = oracle.orElseThrow();
    if (!here.reasons().equals(there.reasons())) {
      return "order of the reasons";
    }
    if (!here.open().equals(there.open())) {
      return "order of the open points";
    }
    return here.checks().stream()
            .filter(check -> !there.checks().contains(check))
            .map(OracleCheck::limit)
            .findFirst()
            .orElse("number of the checks")
        + " in its figures";
  }
}
