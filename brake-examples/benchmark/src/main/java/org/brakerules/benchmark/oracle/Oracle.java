package org.brakerules.benchmark.oracle;

import java.util.Map;
import java.util.TreeMap;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;

/**
 * Decides a brake job from the sentences of the trade. What is replaced because something else is
 * replaced is found by going over the bench until nothing more is added, and nothing is its own
 * reason.
 */
public final class Oracle {

  private Oracle() {}

  /** Decides every part that the job mentions or its brakes have for certain. */
  public static Map<Place, OracleDecision> decide(BrakeJob job) {
    Bench bench = new Bench(job);
    bench.goOver();
    Map<Place, OracleDecision> decisions = new TreeMap<>();
    for (WheelEndView end : bench.ends()) {
      end.parts()
          .forEach(
              parts ->
                  parts.forEach(part -> decisions.put(part.place(), Conclusion.of(bench, part))));
      end.unmentioned().forEach(part -> decisions.put(part.place(), Conclusion.of(bench, part)));
    }
    return decisions;
  }
}
