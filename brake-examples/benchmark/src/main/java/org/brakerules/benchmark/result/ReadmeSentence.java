package org.brakerules.benchmark.result;

/** What the README says of speed, made from the result file. */
public final class ReadmeSentence {

  /** How the sentence begins, and nothing else in the README. */
  public static final String START = "**How fast it is.**";

  private ReadmeSentence() {}

  /** The sentence. */
  public static String of(Results results) {
    return START
        + " A wheel end takes %s times as long as plain Java that comes to the same decisions, lines of JSON come through %s times as fast as with it, and the first decision costs %s times the processor time of a Java that does nothing%s. `java -jar brake-examples/benchmark/target/benchmark.jar` measures [every figure](docs/performance.md) anew."
            .formatted(
                ratio(results, "one-wheel-end-against-oracle"),
                ratio(results, "pipeline-against-oracle"),
                ratio(results, "cold-start"),
                results.caution().isEmpty() ? "" : " (provisional figures)");
  }

  private static String ratio(Results results, String id) {
    return results.figures().stream()
        .filter(figure -> figure.id().equals(id))
        .flatMap(figure -> figure.measured().stream())
        .map(measured -> PerformancePage.shown(measured.value()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("There is no figure " + id + "."));
  }
}
