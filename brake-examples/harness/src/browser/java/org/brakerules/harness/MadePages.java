package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The HTML pages that the commands write. They stay under target, to be looked at. */
final class MadePages {

  static final Path FOLDER = Path.of("target", "browser");

  private MadePages() {}

  /** Every sheet of every demo job. */
  static List<Path> sheets() throws IOException {
    List<Path> sheets = new ArrayList<>();
    for (DemoJob job : DemoJob.values()) {
      Path folder = folder(job);
      run("sheet", job.path(), "--out", folder.toString());
      try (Stream<Path> files = Files.list(folder)) {
        files.filter(file -> file.toString().endsWith(".html")).sorted().forEach(sheets::add);
      }
    }
    return sheets;
  }

  /** Where the sheets of a job lie. */
  static Path folder(DemoJob job) {
    return FOLDER.resolve(String.valueOf(job.file().getFileName()).replace(".json", ""));
  }

  /** The reference as one book, and what the cases show. */
  static List<Path> books() {
    Path reference = FOLDER.resolve("reference.html");
    run("reference", "--format", "html", reference.toString());
    Path coverage = FOLDER.resolve("coverage.html");
    run("coverage", "--format", "html", "--output", coverage.toString());
    return List.of(reference, coverage);
  }

  private static void run(String... args) {
    CommandLineRun run = CommandLineRun.of(args);
    assertThat(run.exitCode()).as(run.err()).isZero();
  }
}
