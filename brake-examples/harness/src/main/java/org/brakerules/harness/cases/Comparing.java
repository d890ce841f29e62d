package org.brakerules.harness.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;

/** Compares what a case expects with what was decided. */
final class Comparing {

  private final RuleCase.Expected expected;
  private final Answers rules;
  private final BrakeJob job;
  private final JobDecision decision;
  private final List<String> mismatches = new ArrayList<>();

  Comparing(RuleCase.Expected expected, Answers rules, BrakeJob job, JobDecision decision) {
    this.expected = expected;
    this.rules = rules;
    this.job = job;
    this.decision = decision;
  }

  /** What is not as expected, in words. */
  List<String> mismatches() {
    expected.fires().forEach(this::fires);
    expected.near().forEach(this::isSilent);
    expected.dispositions().forEach(compare(one -> name(one.disposition())));
    expected.holds().forEach(this::isHeld);
    expected.needs().forEach(this::isNeeded);
    expected.road().forEach(compare(one -> name(one.road())));
    return mismatches;
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
    if (isKnown(rule)) {
      rules
          .whyNot(job, rule)
          .ifPresentOrElse(
              why -> failsAsExpected(rule, why),
              () -> mismatches.add("expected " + rule + " not to fire, but it does"));
      reasons(rule)
          .forEach(
              reason ->
                  mismatches.add("expected " + rule + " not to fire, got " + reason.sentence()));
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

  private void isHeld(String path) {
    part(path)
        .filter(one -> !one.hold())
        .ifPresent(one -> mismatches.add("expected " + path + " on hold, got none" + why(one)));
  }

  private void isNeeded(String point) {
    List<String> needed =
        decision.decisions().stream()
            .flatMap(one -> one.needed().stream())
            .map(Needed::point)
            .distinct()
            .toList();
    if (!needed.contains(point)) {
      mismatches.add("expected " + point + " to be needed, got " + needed);
    }
  }

  private BiConsumer<String, String> compare(Function<Decision, String> answer) {
    return (path, wanted) ->
        part(path)
            .filter(one -> !answer.apply(one).equals(wanted))
            .ifPresent(
                one ->
                    mismatches.add(
                        "expected %s: %s, got %s%s"
                            .formatted(path, wanted, answer.apply(one), why(one))));
  }

  private Optional<Decision> part(String path) {
    Optional<Decision> found =
        decision.decisions().stream()
            .filter(one -> pathBelowWheelEnd(one).equals(path))
            .findFirst();
    if (found.isEmpty()) {
      mismatches.add("expected an answer for " + path + ", got none");
    }
    return found;
  }

  private static String pathBelowWheelEnd(Decision decision) {
    WheelEndPath wheelEnd = decision.part().wheelEnd();
    String path = decision.part().toString().substring(wheelEnd.toString().length() + 1);
    return wheelEnd.side() == Side.RIGHT ? "right/" + path : path;
  }

  private List<Reason> reasons(String rule) {
    return decision.decisions().stream()
        .flatMap(one -> one.reasons().stream())
        .filter(reason -> reason.rule().equals(rule))
        .distinct()
        .toList();
  }

  private static String why(Decision decision) {
    return decision.reasons().stream()
        .map(reason -> reason.rule() + " " + reason.sentence())
        .collect(Collectors.joining(" / ", ", because: ", ""));
  }

  private static String name(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
