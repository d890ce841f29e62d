package org.brakerules.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.brakerules.JobRefusedException;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.BrakeJobBuilder;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.random.Records;

/** Makes a job smaller for as long as it shows the same disagreement. */
final class Smaller {

  private Smaller() {}

  /** A job from which nothing can be taken away without losing the disagreement. */
  static Disagreement of(Disagreement found) {
    Disagreement smallest = found;
    Optional<Disagreement> next = Optional.of(found);
    while (next.isPresent()) {
      smallest = next.get();
      next = step(smallest);
    }
    return smallest;
  }

  private static Optional<Disagreement> step(Disagreement found) {
    return Stream.of(
            withoutMakersLimits(found.job()),
            withoutWheelEnds(found.job()),
            withoutParts(found.job()),
            withoutProperties(found.job()),
            withoutLayout(found.job()))
        .flatMap(jobs -> jobs)
        .flatMap(job -> same(found, job).stream())
        .findFirst();
  }

  /** The disagreement of the same kind that the smaller job shows on the same part. */
  private static Optional<Disagreement> same(Disagreement found, BrakeJob smaller) {
    try {
      return Comparison.of(smaller).disagreements().stream()
          .filter(one -> one.part().equals(found.part()) && one.kind().equals(found.kind()))
          .findFirst();
    } catch (JobRefusedException refused) {
      return Optional.empty();
    }
  }

  private static Stream<BrakeJob> withoutMakersLimits(BrakeJob job) {
    return job.makersLimits().stream()
        .map(limit -> build(job, without(job.makersLimits(), limit), ends(job)));
  }

  private static Stream<BrakeJob> withoutWheelEnds(BrakeJob job) {
    return ends(job).size() == 1
        ? Stream.empty()
        : ends(job).stream().map(end -> build(job, job.makersLimits(), without(ends(job), end)));
  }

  /** First half of the parts are tried, then a quarter, and so on down to a single part. */
  private static Stream<BrakeJob> withoutParts(BrakeJob job) {
    return ends(job).stream()
        .flatMap(
            end ->
                IntStream.iterate(end.parts().size(), size -> size > 0, size -> size / 2)
                    .boxed()
                    .flatMap(size -> withoutRuns(end.parts(), size))
                    .map(parts -> with(job, end, parts)));
  }

  private static Stream<List<Part>> withoutRuns(List<Part> parts, int size) {
    return IntStream.iterate(0, from -> from < parts.size(), from -> from + size)
        .mapToObj(
            from -> {
              List<Part> fewer = new ArrayList<>(parts);
              fewer.subList(from, Math.min(from + size, parts.size())).clear();
              return fewer;
            });
  }

  private static Stream<BrakeJob> withoutProperties(BrakeJob job) {
    return ends(job).stream()
        .flatMap(
            end ->
                end.parts().stream()
                    .flatMap(part -> blanker(part).map(other -> replaced(job, end, part, other))));
  }

  private static Stream<Part> blanker(Part part) {
    return blanker(part, part.partKind().blank(part.tag()));
  }

  private static Stream<BrakeJob> withoutLayout(BrakeJob job) {
    return ends(job).stream()
        .flatMap(
            end ->
                blanker(end.layout(), Layout.UNKNOWN)
                    .map(layout -> with(job, end, new WheelEnd(end.path(), layout, end.parts()))));
  }

  /** The record with one component left unstated. */
  private static <R> Stream<R> blanker(R record, R blank) {
    return Records.components(record.getClass()).stream()
        .filter(
            component ->
                !Records.valueOf(record, component).equals(Records.valueOf(blank, component)))
        .map(
            component ->
                Records.with(record, component.getName(), Records.valueOf(blank, component)));
  }

  private static BrakeJob replaced(BrakeJob job, WheelEnd end, Part part, Part other) {
    return with(job, end, end.parts().stream().map(one -> one.equals(part) ? other : one).toList());
  }

  private static BrakeJob with(BrakeJob job, WheelEnd end, List<Part> parts) {
    return with(job, end, new WheelEnd(end.path(), end.layout(), parts));
  }

  private static BrakeJob with(BrakeJob job, WheelEnd end, WheelEnd other) {
    return build(
        job,
        job.makersLimits(),
        ends(job).stream().map(one -> one.equals(end) ? other : one).toList());
  }

  private static List<WheelEnd> ends(BrakeJob job) {
    return job.wheelEnds().toList();
  }

  private static <T> List<T> without(List<T> list, T left) {
    List<T> fewer = new ArrayList<>(list);
    fewer.remove(left);
    return fewer;
  }

  private static BrakeJob build(BrakeJob job, List<MakersLimit> limits, List<WheelEnd> ends) {
    BrakeJobBuilder smaller =
        BrakeJob.builder()
            .date(job.date())
            .ruleSet(job.ruleSet().id())
            .scope(job.scope())
            .acceptance(job.acceptance());
    limits.forEach(smaller::makersLimit);
    ends.forEach(smaller::wheelEnd);
    for (VehicleUnit unit : job.units()) {
      unit.builtOn().ifPresent(day -> smaller.builtOn(unit.name(), day));
      unit.axles().forEach(axle -> smaller.axle(unit.name(), axle.number(), axle.kind()));
    }
    return smaller.build();
  }
}
