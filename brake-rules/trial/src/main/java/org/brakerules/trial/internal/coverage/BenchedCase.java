package org.brakerules.trial.internal.coverage;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.internal.RuleBase;
import org.brakerules.internal.decide.DecisionMaker;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.trial.coverage.CaseName;

/**
 * One case with all that the rules can match on.
 *
 * @param name which case it is
 * @param job its job
 * @param named the rules it expects to fire or not to fire
 * @param fired the names of the rules that fire
 * @param facts the facts by their type
 */
public record BenchedCase(
    CaseName name,
    BrakeJob job,
    Set<String> named,
    Set<String> fired,
    Map<Class<?>, List<Object>> facts) {

  /** Lets the engine decide a case and keeps what it matched on. */
  public static BenchedCase of(CaseName name, BrakeJob job, Set<String> named, RuleBase base) {
    DecisionMaker maker = new DecisionMaker(job, base.tables(), base.engine());
    return new BenchedCase(
        name, job, named, Set.copyOf(maker.matches().keySet()), byType(maker.facts()));
  }

  /** The facts of one type. */
  List<Object> facts(Class<?> type) {
    return facts.getOrDefault(type, List.of());
  }

  private static Map<Class<?>, List<Object>> byType(Collection<Object> facts) {
    return facts.stream().collect(Collectors.groupingBy(Object::getClass));
  }
}
