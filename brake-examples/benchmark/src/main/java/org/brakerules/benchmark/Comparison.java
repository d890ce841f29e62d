package org.brakerules.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.brakerules.benchmark.oracle.OracleDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;

/**
 * The answers of both to one job.
 *
 * @param decisions the number of parts decided
 * @param hash a number made of the whole answer of the rule base, the same in every run
 * @param disagreements the parts on which they differ
 */
record Comparison(int decisions, long hash, List<Disagreement> disagreements) {

  static Comparison of(BrakeJob job) {
    Map<Place, OracleDecision> rules = Answers.ofRules(job);
    Map<Place, OracleDecision> oracle = Answers.ofOracle(job);
    TreeSet<Place> parts = new TreeSet<>(rules.keySet());
    parts.addAll(oracle.keySet());
    List<Disagreement> disagreements = new ArrayList<>();
    long hash = 0;
    for (Place part : parts) {
      Optional<OracleDecision> ofRules = Optional.ofNullable(rules.get(part));
      Optional<OracleDecision> ofOracle = Optional.ofNullable(oracle.get(part));
      hash = hash * 31 + AnswerHash.of(part, ofRules);
      if (!ofRules.equals(ofOracle)) {
        disagreements.add(new Disagreement(job, part, ofRules, ofOracle));
      }
    }
    return new Comparison(parts.size(), hash, disagreements);
  }
}
