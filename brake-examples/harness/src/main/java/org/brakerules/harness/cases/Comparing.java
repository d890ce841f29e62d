package org.brakerules.harness.cases;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.job.BrakeJob;

/**
 * Compares what a case expects with what was decided. What it does not name is expected to be as on
 * the sound axle, so that nothing happens beside a case unseen.
 */
final class Comparing {

  private final RuleCase.Expected expected;
  private final Answers rules;
  private final BrakeJob job;
  private final JobDecision decision;
  private final Outcome outcome;
  private final List<String> mismatches = new ArrayList<>();

  Comparing(RuleCase.Expected expected, Answers rules, BrakeJob job, JobDecision decision) {
    this.expected = expected;
    this.rules = rules;
    this.job = job;
    this.decision = decision;
    this.outcome = Outcome.of(decision);
  }

  /**
   * What is not as expected, in words. The sound axle is decided only if what is named is as
   * expected.
   */
  List<String> mismatches(Supplier<JobDecision> soundAxle) {
    named();
    if (mismatches.isEmpty()) {
      notNamed(Outcome.of(soundAxle.get()));
    }
    return mismatches;
  }

  private void named() {
    expected.fires().forEach(this::fires);
    expected.near().forEach(this::isSilent);
    expected.speaks().forEach(this::speaks);
    compare(expected.dispositions(), outcome.dispositions());
    missing(expected.holds(), outcome.holds())
        .forEach(
            path ->
                mismatches.add("expected " + path + " on hold, got none" + outcome.because(path)));
    missing(expected.needs(), outcome.needs())
        .forEach(
            point ->
                mismatches.add(
                    "expected " + point + " to be needed, got " + List.copyOf(outcome.needs())));
    compare(expected.road(), outcome.road());
  }

  private void notNamed(Outcome sound) {
    unlike(sound);
    missing(outcome.holds(), expected.holds())
        .forEach(
            path ->
                mismatches.add(
                    "nobody expects "
                        + path
                        + " on hold; name it under holds"
                        + outcome.because(path)));
    Set<String> needs = missing(outcome.needs(), expected.needs());
    missing(needs, sound.needs())
        .forEach(
            point ->
                mismatches.add("nobody expects " + point + " to be needed; name it under needs"));
  }

  /** A request to look is no reason any more once it was looked at, but its rule fires still. */
  private void fires(String rule) {
    if (isKnown(rule) && reasons(rule).isEmpty()) {
      rules
          .whyNot(job, rule)
          .ifPresent(why -> mismatches.add("expected " + rule + " to fire, but " + why));
    }
  }

  private void isSilent(String rule) {
    if (!isKnown(rule)) {
      return;
    }
    List<Reason> reasons = reasons(rule);
    if (!reasons.isEmpty()) {
      mismatches.add("expected " + rule + " not to fire, got " + sentences(reasons));
      return;
    }
    rules
        .whyNot(job, rule)
        .ifPresentOrElse(
            why -> failsAsExpected(rule, why),
            () -> mismatches.add("expected " + rule + " not to fire, but it does"));
  }

  private void speaks(String rule, List<String> wanted) {
    Set<String> got = outcome.spokenOfBy(rule);
    if (isKnown(rule) && !got.equals(Set.copyOf(wanted))) {
      mismatches.add(
          "expected %s to speak of %s and no others, got %s".formatted(rule, wanted, got));
    }
  }

  private void failsAsExpected(String rule, String why) {
    String wanted = expected.fails();
    if (!why.toLowerCase(Locale.ROOT).contains(wanted.toLowerCase(Locale.ROOT))) {
      mismatches.add(
          "expected %s not to fire because of \"%s\", got %s".formatted(rule, wanted, why));
    }
  }

  private boolean isKnown(String rule) {
    if (rules.rules().contains(rule)) {
      return true;
    }
    mismatches.add("there is no rule " + rule);
    return false;
  }

  private void compare(Map<String, String> wanted, Map<String, String> got) {
    wanted.forEach(
        (path, answer) -> {
          if (!got.containsKey(path)) {
            mismatches.add("expected an answer for " + path + ", got none");
          } else if (!got.get(path).equals(answer)) {
            mismatches.add(
                "expected %s: %s, got %s%s"
                    .formatted(path, answer, got.get(path), outcome.because(path)));
          }
        });
  }

  private void unlike(Outcome sound) {
    Map<String, String> asSound = sound.dispositions();
    outcome
        .dispositions()
        .forEach(
            (path, answer) -> {
              if (!expected.dispositions().containsKey(path) && !answer.equals(asSound.get(path))) {
                mismatches.add(
                    "nobody expects %s: %s, on the sound axle it is %s; name it under then or also%s"
                        .formatted(
                            path,
                            answer,
                            asSound.getOrDefault(path, "not there"),
                            outcome.because(path)));
              }
            });
  }

  private static String sentences(List<Reason> reasons) {
    return reasons.stream().map(Reason::sentence).distinct().collect(Collectors.joining(" / "));
  }

  private static Set<String> missing(Iterable<String> wanted, Iterable<String> among) {
    Set<String> missing = new LinkedHashSet<>();
    wanted.forEach(missing::add);
    among.forEach(missing::remove);
    return missing;
  }

  private List<Reason> reasons(String rule) {
    return decision.decisions().stream()
        .flatMap(one -> one.reasons().stream())
        .filter(reason -> reason.rule().equals(rule))
        .distinct()
        .toList();
  }
}
