package org.brakerules.benchmark.oracle;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.part.PartKind;

/**
 * What a sentence ends with: what becomes of which parts.
 *
 * @param verdict what is said of them
 * @param property the property to look at; empty for other verdicts
 * @param target the parts; empty for the part the sentence begins with
 * @param across whether they are at the other end of the axle
 * @param sameStation whether they are at the station of the part the sentence begins with
 */
record Effect(
    Verdict verdict,
    String property,
    Optional<Subject> target,
    boolean across,
    boolean sameStation) {

  /** What can be said of a part. */
  enum Verdict {
    CLEAN(Disposition.CLEAN),
    ADJUST(Disposition.ADJUST),
    /** Says nothing of the part once the property was looked at; until then it is open. */
    LOOK(Disposition.REUSE),
    /** Undecided until the work is done and it was looked at once more. */
    AGAIN(Disposition.UNDECIDED),
    HOLD(Disposition.UNDECIDED),
    REPLACE(Disposition.REPLACE);

    final Disposition disposition;

    Verdict(Disposition disposition) {
      this.disposition = disposition;
    }
  }

  static Effect clean() {
    return self(Verdict.CLEAN, "");
  }

  static Effect adjust() {
    return self(Verdict.ADJUST, "");
  }

  static Effect look(String property) {
    return self(Verdict.LOOK, property);
  }

  static Effect again() {
    return self(Verdict.AGAIN, "");
  }

  static Effect hold() {
    return self(Verdict.HOLD, "");
  }

  static Effect replace() {
    return self(Verdict.REPLACE, "");
  }

  private static Effect self(Verdict verdict, String property) {
    return new Effect(verdict, property, Optional.empty(), false, false);
  }

  Effect of(PartKind kind) {
    return of(Subject.any(kind));
  }

  Effect of(Subject parts) {
    return new Effect(verdict, property, Optional.of(parts), across, sameStation);
  }

  Effect atSameStation() {
    return new Effect(verdict, property, target, across, true);
  }

  Effect acrossAxle() {
    return new Effect(verdict, property, target, true, sameStation);
  }

  /** The parts at one wheel end of which it is said. */
  List<Facts> targets(Bench bench, WheelEndView end, Facts from) {
    if (target.isEmpty()) {
      return List.of(from);
    }
    return bench.end(across ? end.path().partner() : end.path()).stream()
        .flatMap(
            there ->
                there.parts(target.get().kind()).stream()
                    .filter(part -> target.get().holds(bench, there, part)))
        .filter(part -> !sameStation || part.part().station() == from.part().station())
        .toList();
  }
}
