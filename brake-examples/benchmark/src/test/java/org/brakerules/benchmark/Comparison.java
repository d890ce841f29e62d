package org.brakerules.benchmark;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.brakerules.BrakeRules;
import org.brakerules.benchmark.oracle.Oracle;
import org.brakerules.benchmark.oracle.OracleDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;

/**
 * The answers of both to one job.
 *
 * @param decisions the number of parts decided
 * @param disagreements the parts on which they differ
 */
record Comparison(int decisions, List<Disagreement> disagreements) {

  static Comparison of(BrakeJob job) {
    Map<Place, OracleDecision> rules = new TreeMap<>();
    BrakeRules.standard()
        .decide(job)
        .decisions()
        .forEach(one -> rules.put(one.part(), new OracleDecision(one.disposition(), one.hold())));
    Map<Place, OracleDecision> oracle = Oracle.decide(job);
    TreeSet<Place> parts = new TreeSet<>(rules.keySet());
    parts.addAll(oracle.keySet());
    List<Disagreement> disagreements =
        parts.stream()
            .map(
                part ->
                    new Disagreement(
                        job,
                        part,
                        Optional.ofNullable(rules.get(part)),
                        Optional.ofNullable(oracle.get(part))))
            .filter(one -> !one.rules().equals(one.oracle()))
            .toList();
    return new Comparison(parts.size(), disagreements);
  }
}
