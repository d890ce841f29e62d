package org.brakerules.trial.coverage;

import java.util.List;

/**
 * What the cases show of one rule.
 *
 * @param id the id, such as {@code CAMSHAFT-BUSHING-010}
 * @param component the folder it lies in
 * @param title the title
 * @param fires the cases that fire it, those that name it first, then those of its component
 * @param near the cases in which all of its conditions hold but one, as far as they name it or lie
 *     beside its component; those that name it come first
 * @param saidNear the cases that call it a near miss, though more than one condition fails
 * @param conditions its conditions, in the order written
 */
public record RuleCoverage(
    String id,
    String component,
    String title,
    List<CaseName> fires,
    List<CaseName> near,
    List<CaseName> saidNear,
    List<ConditionCoverage> conditions) {

  /** Keeps its own copies of the lists. */
  public RuleCoverage {
    fires = List.copyOf(fires);
    near = List.copyOf(near);
    saidNear = List.copyOf(saidNear);
    conditions = List.copyOf(conditions);
  }
}
