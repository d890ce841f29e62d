package org.brakerules.benchmark;

import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.brakerules.model.json.JobWriter;

/** What the comparison of many jobs came to. Not to be shared between threads. */
final class Tally {

  private long jobs;
  private long decisions;
  private long hash;
  private final Map<String, Kind> kinds = new TreeMap<>();

  /** How often one kind of disagreement came up, with the smallest job that shows it. */
  private record Kind(long times, Disagreement smallest) {

    Kind and(Kind other) {
      Disagreement smaller = size(other.smallest) < size(smallest) ? other.smallest : smallest;
      return new Kind(times + other.times, smaller);
    }

    private static long size(Disagreement disagreement) {
      return disagreement.job().parts().count();
    }
  }

  /** Adds the comparison of the job of a seed; in which order does not matter. */
  void add(long seed, Comparison comparison) {
    jobs++;
    decisions += comparison.decisions();
    hash += mixed(comparison.hash() ^ mixed(seed));
    for (Disagreement one : comparison.disagreements()) {
      kinds.merge(one.kind(), new Kind(1, one), Kind::and);
    }
  }

  /** Lets no two jobs exchange their answers unnoticed: the last step of MurmurHash3. */
  private static long mixed(long number) {
    long half = (number ^ (number >>> 33)) * 0xFF51AFD7ED558CCDL;
    long whole = (half ^ (half >>> 33)) * 0xC4CEB9FE1A85EC53L;
    return whole ^ (whole >>> 33);
  }

  /** Adds what another thread counted. */
  void add(Tally other) {
    jobs += other.jobs;
    decisions += other.decisions;
    hash += other.hash;
    other.kinds.forEach((name, kind) -> kinds.merge(name, kind, Kind::and));
  }

  boolean isAgreed() {
    return kinds.isEmpty();
  }

  Agreement.Outcome outcome() {
    return new Agreement.Outcome(jobs, decisions, disagreements());
  }

  long disagreements() {
    return kinds.values().stream().mapToLong(Kind::times).sum();
  }

  /** A number made of all answers, whatever the order in which they were given. */
  String hash() {
    return "%016x".formatted(hash);
  }

  /** The figures, the kinds of disagreement, and the smallest example of the most frequent. */
  String report(int examples) {
    String figures =
        "%d jobs, %d decisions compared, %d disagreements, hash of the answers %s"
            .formatted(jobs, decisions, disagreements(), hash());
    return isAgreed()
        ? figures
        : figures
            + "\n"
            + kinds.entrySet().stream()
                .sorted(Comparator.comparing(kind -> -kind.getValue().times()))
                .map(kind -> kind.getValue().times() + " " + kind.getKey())
                .collect(Collectors.joining("\n"))
            + "\n"
            + kinds.values().stream()
                .sorted(Comparator.comparing(kind -> -kind.times()))
                .limit(examples)
                .map(Tally::example)
                .collect(Collectors.joining("\n"));
  }

  private static String example(Kind kind) {
    Disagreement smallest = Smaller.of(kind.smallest());
    return smallest.part() + ", " + smallest.kind() + "\n" + JobWriter.write(smallest.job());
  }
}
