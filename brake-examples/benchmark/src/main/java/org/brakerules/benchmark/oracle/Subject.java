package org.brakerules.benchmark.oracle;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.reading.Station;

/**
 * The parts a sentence begins with, and what must be known of them.
 *
 * @param kind the kind of part
 * @param isRenewed whether they are the parts that were found and do not go back
 * @param tests all that must hold
 * @param signs the signs of which one must be seen, which the sentence answers; empty if none must
 * @param limits the limits the sentence answers, where a reading is beyond them
 */
record Subject(PartKind kind, boolean isRenewed, List<Test> tests, long signs, long limits) {

  /** Something that is so, or is not, of a part on the bench. */
  @FunctionalInterface
  interface Test {
    boolean holds(Bench bench, Facts part);
  }

  static Subject any(PartKind kind) {
    return new Subject(kind, false, List.of(), 0, 0);
  }

  /** Parts that were on the vehicle. */
  static Subject old(PartKind kind) {
    return any(kind).with((bench, part) -> part.asFound());
  }

  /** Parts fitted in this job. */
  static Subject fresh(PartKind kind) {
    return any(kind).with((bench, part) -> !part.asFound());
  }

  static Subject renewed(PartKind kind) {
    return new Subject(kind, true, List.of(), 0, 0);
  }

  Subject seen(String... names) {
    long any = Knowable.of(kind).set(names);
    return new Subject(kind, isRenewed, tests, signs | any, limits);
  }

  /** A look was made and did not find it. */
  Subject notSeen(String name) {
    long sign = Knowable.of(kind).set(name);
    return with((bench, part) -> (part.notSeen() & sign) != 0);
  }

  /**
   * A reading of such a part is beyond a limit; the numbers of parts at one place do not count. The
   * names of the limits are those of the tables without the kind of part.
   */
  Subject beyond(String... names) {
    List<String> ids = Arrays.stream(names).map(name -> kind.id() + "." + name).toList();
    long any = Trade.limitSet(kind, ids);
    Test beyond = (bench, part) -> isOneBeyond(bench, part, any);
    return new Subject(kind, isRenewed, and(beyond), signs, limits | any);
  }

  private boolean isOneBeyond(Bench bench, Facts part, long any) {
    if ((part.beyond() & any) != 0) {
      return true;
    }
    for (Facts one : part.end().parts(kind)) {
      if ((one.beyond() & any) != 0 && one.isAtPlaceOf(part) && holds(bench, one)) {
        return true;
      }
    }
    return false;
  }

  Subject missing() {
    return with((bench, part) -> part.missing());
  }

  Subject at(Station station) {
    return with((bench, part) -> part.station() == station);
  }

  /** The part and its brake are surely so. */
  Subject where(String which) {
    Which read = Which.read(kind, which);
    return with((bench, part) -> read.fit(part) == Fit.YES);
  }

  /** The part and its brake are not surely so. */
  Subject unless(String which) {
    Which read = Which.read(kind, which);
    return with((bench, part) -> read.fit(part) != Fit.YES);
  }

  /** Removed or separated in this job; the numbers of parts at one place do not count. */
  Subject disturbed() {
    return with(Subject::isOneDisturbed);
  }

  private static boolean isOneDisturbed(Bench bench, Facts part) {
    for (Facts one : part.end().parts(part.kind())) {
      if (one.isAtPlaceOf(part) && one.part().tag().disturbed(bench.job().scope())) {
        return true;
      }
    }
    return false;
  }

  Subject with(Test test) {
    return new Subject(kind, isRenewed, and(test), signs, limits);
  }

  private List<Test> and(Test test) {
    return Stream.concat(tests.stream(), Stream.of(test)).toList();
  }

  boolean holds(Bench bench, Facts part) {
    if (signs != 0 && (part.seen() & signs) == 0) {
      return false;
    }
    for (int i = 0; i < tests.size(); i++) {
      if (!tests.get(i).holds(bench, part)) {
        return false;
      }
    }
    return true;
  }
}
