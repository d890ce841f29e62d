package org.brakerules.benchmark;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.brakerules.model.json.JobWriter;
import org.brakerules.random.RandomJobs;

/** What the comparison of many jobs came to. */
final class Tally {

  private final long jobs;
  private final long decisions;
  private final Map<String, List<Disagreement>> byKind;

  private Tally(List<Comparison> comparisons) {
    jobs = comparisons.size();
    decisions = comparisons.stream().mapToLong(Comparison::decisions).sum();
    byKind =
        comparisons.stream()
            .flatMap(comparison -> comparison.disagreements().stream())
            .collect(Collectors.groupingBy(Disagreement::kind, TreeMap::new, Collectors.toList()));
  }

  /** The tally over random jobs, from a first seed on. */
  static Tally of(int jobs, long firstSeed) {
    return new Tally(
        LongStream.range(firstSeed, firstSeed + jobs)
            .parallel()
            .mapToObj(seed -> Comparison.of(RandomJobs.of(seed)))
            .toList());
  }

  boolean isAgreed() {
    return byKind.isEmpty();
  }

  /** The figures, the kinds of disagreement, and the smallest example of the most frequent. */
  String report(int examples) {
    return "%d jobs, %d decisions compared, %d disagreements%n%s%n%s"
        .formatted(
            jobs,
            decisions,
            byKind.values().stream().mapToInt(List::size).sum(),
            byKind.entrySet().stream()
                .map(kind -> kind.getValue().size() + " " + kind.getKey())
                .collect(Collectors.joining("\n")),
            byKind.values().stream()
                .sorted(Comparator.comparing(list -> -list.size()))
                .limit(examples)
                .map(Tally::example)
                .collect(Collectors.joining("\n")));
  }

  private static String example(List<Disagreement> ofOneKind) {
    Disagreement smallest =
        Smaller.of(
            ofOneKind.stream()
                .min(Comparator.comparing(one -> one.job().parts().count()))
                .orElseThrow());
    return smallest.part() + ", " + smallest.kind() + "\n" + JobWriter.write(smallest.job());
  }
}
