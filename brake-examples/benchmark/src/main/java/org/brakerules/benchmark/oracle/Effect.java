package org.brakerules.benchmark.oracle;

import java.util.Optional;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.PartKind;

/**
 * What a sentence ends with: what becomes of which parts.
 *
 * @param rule the id of the rule that says the same
 * @param verdict what is said of them
 * @param property the property to look at or to measure; empty for other verdicts
 * @param target the parts; empty for the part the sentence begins with
 * @param across whether they are at the other end of the axle
 * @param sameStation whether they are at the station of the part the sentence begins with
 */
record Effect(
    String rule,
    Verdict verdict,
    String property,
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
    return new Effect(rule, verdict, property, Optional.empty(), false, false);
  }

  Effect of(PartKind kind) {
    return of(Subject.any(kind));
  }

  Effect of(Subject parts) {
    return new Effect(rule, verdict, property, Optional.of(parts), across, sameStation);
  }

  Effect atSameStation() {
    return new Effect(rule, verdict, property, target, across, true);
  }

  Effect acrossAxle() {
    return new Effect(rule, verdict, property, target, true, sameStation);
  }
}
