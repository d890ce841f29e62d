package org.brakerules.benchmark;

import java.util.Optional;
import org.brakerules.benchmark.oracle.OracleCheck;
import org.brakerules.benchmark.oracle.OracleDecision;
import org.brakerules.benchmark.oracle.OracleReason;
import org.brakerules.model.part.Place;

/** A number made of an answer that is the same in every run; that of an enum constant is not. */
final class AnswerHash {

  private AnswerHash() {}

  static long of(Place part, Optional<OracleDecision> answer) {
    long hash = part.toString().hashCode();
    if (answer.isEmpty()) {
      return hash;
    }
    OracleDecision decision = answer.get();
    hash = with(hash, decision.disposition().name());
    hash = with(hash, decision.hold() ? "hold" : "");
    for (OracleReason reason : decision.reasons()) {
      hash = with(with(hash, reason.rule()), reason.verdict().name());
    }
    for (OracleCheck check : decision.checks()) {
      hash = with(with(hash, check.limit()), check.status().name());
      hash = with(hash, check.figure().map(Object::toString).orElse(""));
      hash = with(hash, check.reading().map(Object::toString).orElse(""));
      hash = with(hash, check.margin().map(Object::toString).orElse(""));
    }
    for (String point : decision.open()) {
      hash = with(hash, point);
    }
    return hash;
  }

  private static long with(long hash, String text) {
    return hash * 1_000_003 + text.hashCode();
  }
}
