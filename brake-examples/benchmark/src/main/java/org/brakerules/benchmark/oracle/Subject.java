package org.brakerules.benchmark.oracle;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Sign;
import org.brakerules.model.reading.Station;

/**
 * The parts a sentence begins with, and what must be known of them.
 *
 * @param kind the kind of part
 * @param tests all that must hold
 * @param signs the signs the sentence answers, where they were seen
 * @param limits the limits the sentence answers, where a reading is beyond them
 */
record Subject(PartKind kind, List<Test> tests, List<String> signs, List<String> limits) {

  /** Something that is so, or is not, of a part on the bench. */
  @FunctionalInterface
  interface Test {
    boolean holds(Bench bench, WheelEndView end, Facts part);
  }

  static Subject any(PartKind kind) {
    return new Subject(kind, List.of(), List.of(), List.of());
  }

  /** Parts that were on the vehicle. */
  static Subject old(PartKind kind) {
    return any(kind).with((bench, end, part) -> part.asFound());
  }

  /** Parts fitted in this job. */
  static Subject fresh(PartKind kind) {
    return any(kind).with((bench, end, part) -> !part.asFound());
  }

  Subject seen(String... names) {
    return with((bench, end, part) -> signs(part, Sign.SEEN, names)).answering(names);
  }

  /** A look was made and did not find it. */
  Subject notSeen(String name) {
    return with((bench, end, part) -> part.sign(name) == Sign.NOT_SEEN).answering(name);
  }

  /** A reading of such a part is beyond a limit; the numbers of parts at one place do not count. */
  Subject beyond(String... names) {
    List<String> ids = Arrays.stream(names).map(name -> kind.id() + "." + name).toList();
    Test beyond =
        (bench, end, part) ->
            end.samePlace(part)
                .filter(one -> holds(bench, end, one))
                .anyMatch(one -> ids.stream().anyMatch(id -> bench.isBeyond(id, end, one)));
    return new Subject(kind, join(tests, List.of(beyond)), signs, join(limits, ids));
  }

  Subject missing() {
    return with((bench, end, part) -> part.missing());
  }

  Subject at(Station station) {
    return with((bench, end, part) -> part.part().station() == station);
  }

  Subject where(String which) {
    Which read = Which.read(which);
    return with((bench, end, part) -> read.fit(end, part) == Fit.YES);
  }

  /** The part that was found will not go back. */
  Subject renewed() {
    return with((bench, end, part) -> part.asFound() && bench.isReplaced(part.place()));
  }

  /** Removed or separated in this job; the numbers of parts at one place do not count. */
  Subject disturbed() {
    return with(
        (bench, end, part) ->
            end.samePlace(part).anyMatch(one -> one.part().tag().disturbed(bench.job().scope())));
  }

  Subject with(Test test) {
    return new Subject(kind, join(tests, List.of(test)), signs, limits);
  }

  private Subject answering(String... names) {
    return new Subject(kind, tests, join(signs, List.of(names)), limits);
  }

  boolean holds(Bench bench, WheelEndView end, Facts part) {
    return tests.stream().allMatch(test -> test.holds(bench, end, part));
  }

  private static boolean signs(Facts part, Sign sign, String... names) {
    return Arrays.stream(names).anyMatch(name -> part.sign(name) == sign);
  }

  private static <T> List<T> join(List<T> some, List<T> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }
}
