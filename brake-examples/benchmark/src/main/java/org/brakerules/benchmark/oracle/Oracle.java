package org.brakerules.benchmark.oracle;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;

/**
 * Decides a brake job from the sentences of the trade. What is replaced because something else is
 * replaced is found by going over the bench until nothing more is added; so nothing can be its own
 * reason.
 */
public final class Oracle {

  private final Map<Place, Findings> findings = new HashMap<>();
  private final Bench bench;

  private Oracle(Bench bench) {
    this.bench = bench;
  }

  /** Decides every part that the job mentions or its brakes have for certain. */
  public static Map<Place, OracleDecision> decide(BrakeJob job) {
    Oracle oracle = new Oracle(Bench.of(job));
    oracle.goOver();
    Set<Place> replaced = oracle.replaced();
    while (!replaced.equals(oracle.bench.replaced())) {
      oracle = new Oracle(oracle.bench.replacing(replaced));
      oracle.goOver();
      replaced = oracle.replaced();
    }
    return oracle.decisions();
  }

  private void goOver() {
    for (WheelEndView end : bench.ends().values()) {
      end.parts().forEach(part -> findings.put(part.place(), new Findings()));
    }
    for (WheelEndView end : bench.ends().values()) {
      for (Facts part : end.parts().toList()) {
        Trade.sentences(part.kind()).stream()
            .filter(sentence -> sentence.subject().holds(bench, end, part))
            .forEach(sentence -> speak(sentence, end, part));
      }
    }
  }

  private void speak(Sentence sentence, WheelEndView end, Facts part) {
    for (Effect effect : sentence.effects()) {
      for (Facts target : effect.targets(bench, end, part)) {
        of(target).say(effect);
        of(part).answer(sentence.subject());
      }
    }
  }

  private Findings of(Facts part) {
    Findings of = findings.get(part.place());
    if (of == null) {
      throw new IllegalStateException(part.place() + " is not on the bench.");
    }
    return of;
  }

  private Set<Place> replaced() {
    Set<Place> places = new HashSet<>();
    findings.forEach(
        (place, of) -> {
          if (of.isReplaced()) {
            places.add(place);
          }
        });
    return places;
  }

  private Map<Place, OracleDecision> decisions() {
    Map<Place, OracleDecision> decisions = new TreeMap<>();
    for (WheelEndView end : bench.ends().values()) {
      end.unmentioned()
          .forEach(place -> decisions.put(place, new OracleDecision(Disposition.UNDECIDED, false)));
      for (Facts part : end.parts().toList()) {
        Looks looks = new Looks(bench, end, part, of(part));
        if (part.missing() || looks.isSomethingOpen() || looks.isSomethingUnanswered()) {
          of(part).undecided();
        }
        decisions.put(part.place(), of(part).decision());
      }
    }
    return decisions;
  }
}
