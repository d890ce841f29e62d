package org.brakerules.benchmark.oracle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;

/**
 * Decides a brake job from the sentences of the trade. What is replaced because something else is
 * replaced is found by going over the bench until nothing more is added, and nothing is its own
 * reason.
 */
public final class Oracle {

  private static final Comparator<Facts> IN_PATH_ORDER = Comparator.comparing(Facts::place);

  private Oracle() {}

  /** Decides every part that the job mentions or its brakes have for certain, in path order. */
  public static Map<Place, OracleDecision> decide(BrakeJob job) {
    Bench bench = new Bench(job);
    bench.goOver();
    List<Facts> parts = new ArrayList<>();
    for (WheelEndView end : bench.ends()) {
      end.parts().forEach(parts::addAll);
      parts.addAll(end.unmentioned());
    }
    parts.sort(IN_PATH_ORDER);
    Map<Place, OracleDecision> decisions = new LinkedHashMap<>(2 * parts.size());
    for (Facts part : parts) {
      decisions.put(part.place(), Conclusion.of(bench, part));
    }
    return decisions;
  }
}
