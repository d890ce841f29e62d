package org.brakerules.benchmark.oracle;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;

/**
 * The job laid out, and the parts that are known to be replaced so far.
 *
 * @param job the job
 * @param ends its wheel ends
 * @param measure what its readings prove
 * @param replaced the places of parts that do not go back
 */
record Bench(
    BrakeJob job, Map<WheelEndPath, WheelEndView> ends, Measure measure, Set<Place> replaced) {

  static Bench of(BrakeJob job) {
    return new Bench(job, WheelEndView.of(job), new Measure(job), Set.of());
  }

  Bench replacing(Set<Place> places) {
    return new Bench(job, ends, measure, Set.copyOf(places));
  }

  Optional<WheelEndView> end(WheelEndPath path) {
    return Optional.ofNullable(ends.get(path));
  }

  boolean isReplaced(Place place) {
    return replaced.contains(place);
  }

  /** Both ends of the axle are in the job, both state all of it, and something differs. */
  boolean isUnlikeAcross(WheelEndView end, String... states) {
    Optional<WheelEndView> across = end(end.path().partner());
    return across.isPresent()
        && Stream.of(states)
            .allMatch(state -> isStated(end.state(state)) && isStated(across.get().state(state)))
        && Stream.of(states).anyMatch(state -> !end.state(state).equals(across.get().state(state)));
  }

  private static boolean isStated(String state) {
    return !state.isEmpty() && !state.equals("unknown");
  }

  boolean isBeyond(String limit, WheelEndView end, Facts part) {
    return measure.against(limit, end, part) == Held.BEYOND;
  }
}
