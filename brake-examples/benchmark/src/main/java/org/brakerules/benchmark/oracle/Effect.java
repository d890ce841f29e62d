package org.brakerules.benchmark.oracle;

import java.util.Optional;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.PartKind;

/**
 * What a sentence ends with: what becomes of which parts.
 *
 * @param reason what is said of them, with the id of the rule that says the same
 * @param property the property to look at or to measure; empty for other verdicts
 * @param asks the same as a set of {@link Knowable}, once the kind of part is known
 * @param target the parts; empty for the part the sentence begins with
 * @param across whether they are at the other end of the axle
 * @param sameStation whether they are at the station of the part the sentence begins with
 */
record Effect(
    OracleReason reason,
    String property,
    long asks,
    Optional<Subject> target,
    boolean across,
    boolean sameStation) {

  static Effect clean(String rule) {
    return self(rule, Verdict.CLEAN, "");
  }

  static Effect adjust(String rule) {
    return self(rule, Verdict.ADJUST, "");
  }

  /** Says nothing of the part once the property was looked at; until then it is open. */
  static Effect look(String rule, String property) {
    return self(rule, Verdict.LOOK_AT, property);
  }

  /** Undecided until the work is done and it was looked at once more. */
  static Effect again(String rule, String property) {
    return self(rule, Verdict.MEASURE_AGAIN, property);
  }

  static Effect hold(String rule) {
    return self(rule, Verdict.HOLD, "");
  }

  static Effect replace(String rule) {
    return self(rule, Verdict.REPLACE, "");
  }

  private static Effect self(String rule, Verdict verdict, String property) {
    return new Effect(new OracleReason(rule, verdict), property, 0, Optional.empty(), false, false);
  }

  Verdict verdict() {
    return reason.verdict();
  }

  Effect of(PartKind kind) {
    return of(Subject.any(kind));
  }

  Effect of(Subject parts) {
    return new Effect(reason, property, 0, Optional.of(parts), across, sameStation);
  }

  Effect atSameStation() {
    return new Effect(reason, property, asks, target, across, true);
  }

  Effect acrossAxle() {
    return new Effect(reason, property, asks, target, true, sameStation);
  }

  /** The effect of a sentence that begins with parts of a kind. */
  Effect from(PartKind kind) {
    if (property.isEmpty()) {
      return this;
    }
    PartKind of = target.isPresent() ? target.get().kind() : kind;
    long set = Knowable.of(of).set(property);
    return new Effect(reason, property, set, target, across, sameStation);
  }
}
