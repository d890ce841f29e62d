package org.brakerules.internal.engine;

import java.util.List;
import java.util.Optional;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Part;

/**
 * One rule that spoke.
 *
 * @param rule the rule
 * @param verdict what it said
 * @param part of which part
 * @param point the inspection point it asks for; empty if it asks for none
 * @param facts the facts that matched its conditions
 */
public record Finding(RuleText rule, Verdict verdict, Part part, String point, List<Object> facts) {

  /** The marker a replaced part leaves for the consequences; a new part leaves none. */
  public Optional<Replaced> marker() {
    return verdict == Verdict.REPLACE && part.condition() == Condition.AS_FOUND
        ? Optional.of(new Replaced(part.partKind(), part.wheelEnd()))
        : Optional.empty();
  }
}
