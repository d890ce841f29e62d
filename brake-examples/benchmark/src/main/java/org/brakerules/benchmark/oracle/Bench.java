package org.brakerules.benchmark.oracle;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.jspecify.annotations.Nullable;

/** The job laid out, with all that is said of its parts. */
final class Bench {

  private final BrakeJob job;
  private final List<WheelEndView> ends = new ArrayList<>();
  private final Replacements replacements = new Replacements();
  private final Deque<Facts> toFollow = new ArrayDeque<>();

  Bench(BrakeJob job) {
    this.job = job;
    for (VehicleUnit unit : job.units()) {
      for (Axle axle : unit.axles()) {
        lay(unit, axle);
      }
    }
    Measure measure = new Measure(job);
    for (WheelEndView end : ends) {
      end.parts().forEach(parts -> parts.forEach(part -> part.hold(measure.hold(part))));
      end.unmentioned().forEach(part -> part.hold(measure.hold(part)));
    }
  }

  private void lay(VehicleUnit unit, Axle axle) {
    WheelEndView first = null;
    for (WheelEnd end : axle.wheelEnds()) {
      WheelEndView view = new WheelEndView(job, end, axle.kind(), unit.builtOn());
      if (first != null) {
        first.meet(view);
        view.meet(first);
      }
      first = view;
      ends.add(view);
    }
  }

  BrakeJob job() {
    return job;
  }

  List<WheelEndView> ends() {
    return ends;
  }

  Replacements replacements() {
    return replacements;
  }

  /** Speaks every sentence that holds: first of what was found, then of what follows from it. */
  void goOver() {
    for (WheelEndView end : ends) {
      for (List<Facts> parts : end.parts()) {
        for (Facts part : parts) {
          goOver(part);
        }
      }
    }
    while (!toFollow.isEmpty()) {
      follow(toFollow.pop());
    }
  }

  private void goOver(Facts part) {
    for (Sentence sentence : Trade.sentences(part.kind())) {
      if (sentence.subject().holds(this, part)) {
        for (Effect effect : sentence.effects()) {
          speak(sentence.subject(), effect, part);
        }
      }
    }
  }

  private void speak(Subject subject, Effect effect, Facts part) {
    if (effect.target().isEmpty()) {
      say(new Said(effect, part, subject.limits(), null));
      part.findings().answer(subject.signs());
      return;
    }
    for (Facts target : candidates(effect, part.end())) {
      boolean isThere = !effect.sameStation() || target.station() == part.station();
      if (isThere && effect.target().get().holds(this, target)) {
        say(new Said(effect, target, target == part ? subject.limits() : 0, null));
        part.findings().answer(subject.signs());
      }
    }
  }

  /** What follows from a part that does not go back, once for its kind and wheel end. */
  private void follow(Facts part) {
    Renewal cause = part.renewal();
    for (Effect effect : Trade.consequences(part.kind())) {
      for (Facts target : candidates(effect, part.end())) {
        if (effect.target().orElseThrow().holds(this, target)) {
          Said said = new Said(effect, target, 0, cause);
          cause.follow(said);
          say(said);
        }
      }
    }
  }

  private static List<Facts> candidates(Effect effect, WheelEndView end) {
    @Nullable WheelEndView there = effect.across() ? end.across() : end;
    return there == null ? List.of() : there.parts(effect.target().orElseThrow().kind());
  }

  private void say(Said said) {
    Facts part = said.on();
    boolean firstHandBefore = part.findings().isReplacedFirstHand();
    part.findings().say(said);
    if (part.findings().isReplacedFirstHand() && !firstHandBefore) {
      replacements.replace(part);
    }
    if (said.isReplacement() && part.renewal().becomesDue()) {
      toFollow.push(part);
    }
  }
}
