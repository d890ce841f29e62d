package org.brakerules.harness.cases;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.brakerules.linter.cases.CaseJob;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;

/**
 * What was decided, in the words of a case.
 *
 * @param decisions the decision on each part, by its path below the wheel end; those across the
 *     axle have their side before it, those of other axles the whole path
 */
record Outcome(Map<String, Decision> decisions) {

  static Outcome of(JobDecision decision) {
    Map<String, Decision> decisions = new LinkedHashMap<>();
    decision.decisions().forEach(one -> decisions.put(pathOf(one), one));
    return new Outcome(decisions);
  }

  Map<String, String> dispositions() {
    return all(one -> name(one.disposition()));
  }

  Map<String, String> road() {
    return all(one -> name(one.road()));
  }

  Set<String> holds() {
    return where(Decision::hold);
  }

  Set<String> needs() {
    return decisions.values().stream()
        .map(Decision::needed)
        .flatMap(List::stream)
        .map(Needed::point)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The parts a rule speaks of. */
  Set<String> spokenOfBy(String rule) {
    return where(one -> one.reasons().stream().anyMatch(reason -> reason.rule().equals(rule)));
  }

  /** The reasons of a part, after what was got; empty if it has none. */
  String because(String path) {
    return Optional.ofNullable(decisions.get(path)).map(Outcome::because).orElse("");
  }

  private static String because(Decision decision) {
    return decision.reasons().stream()
        .map(reason -> reason.rule() + " " + reason.sentence())
        .collect(Collectors.joining(" / ", ", because: ", ""));
  }

  private Set<String> where(Predicate<Decision> holds) {
    return decisions.entrySet().stream()
        .filter(one -> holds.test(one.getValue()))
        .map(Map.Entry::getKey)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private Map<String, String> all(Function<Decision, String> answer) {
    Map<String, String> all = new LinkedHashMap<>();
    decisions.forEach((path, one) -> all.put(path, answer.apply(one)));
    return all;
  }

  /** Below the wheel end of the case; a part elsewhere has before it what tells it apart. */
  private static String pathOf(Decision decision) {
    WheelEndPath wheelEnd = decision.part().wheelEnd();
    String whole = decision.part().toString();
    if (wheelEnd.axle() != CaseJob.AXLE) {
      return whole;
    }
    String path = whole.substring(wheelEnd.toString().length() + 1);
    return wheelEnd.side() == Side.RIGHT ? "right/" + path : path;
  }

  private static String name(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
