package org.brakerules.benchmark.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakerules.benchmark.result.Section.Line;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The published page says what the result file holds, and nothing else. */
class PerformancePageTest {

  private static final Path DOCS = Path.of("..", "..", "docs");
  private static final Machine MACHINE = new Machine("a processor", 2, "a system", "a Java");

  @TempDir private Path folder;

  @Test
  void published_page_is_made_from_the_result_file() throws IOException {
    Path page = DOCS.resolve("performance.md");
    String made = PerformancePage.of(ResultFile.read(DOCS.resolve("performance.json")));
    if (Boolean.getBoolean("regenerate")) {
      Files.writeString(page, made);
    }
    assertThat(Files.readString(page)).isEqualTo(made);
  }

  @Test
  void readme_says_what_the_result_file_holds() throws IOException {
    Path readme = DOCS.resolveSibling("README.md");
    String made = ReadmeSentence.of(ResultFile.read(DOCS.resolve("performance.json")));
    if (Boolean.getBoolean("regenerate")) {
      String old = Files.readString(readme);
      int start = old.indexOf(ReadmeSentence.START);
      int end = old.indexOf('\n', start);
      Files.writeString(readme, old.substring(0, start) + made + old.substring(end));
    }
    assertThat(Files.readString(readme)).containsOnlyOnce(made + "\n");
  }

  @Test
  void result_file_gives_back_what_was_written() throws IOException {
    Results results = results("a caution");
    Path file = folder.resolve("results.json");
    ResultFile.write(results, file);

    assertThat(ResultFile.read(file)).isEqualTo(results);
  }

  @Test
  void page_tells_of_every_figure_whether_it_was_reached() {
    assertThat(PerformancePage.of(results("")))
        .contains("| less is better | 3 ± 0.1 x | ≤ 4 x | ≤ 2 x | reached |\n")
        .contains("| more is better | 0.5 ± 0.05 x | ≥ 0.6 x |  | not reached |\n")
        .contains("| never measured |  | ≤ 0 jobs |  | not measured |\n")
        .contains("| heap | 3.14 MB |\n")
        .doesNotContain("**");
  }

  @Test
  void caution_stands_above_everything_measured() {
    assertThat(PerformancePage.of(results("The machine was busy.")))
        .containsSubsequence("**The machine was busy.**", "a command", "## What was to be reached");
  }

  private static Results results(String caution) {
    Target more = new Target(false, 0.6, OptionalDouble.empty());
    return new Results(
        "2026-11-29",
        "a command",
        5,
        caution,
        "1.0.0, 0123",
        MACHINE,
        List.of(
            figure("less is better", "x", Target.atMost(4, 2), Optional.of(new Measured(3, 0.1))),
            figure("more is better", "x", more, Optional.of(new Measured(0.5, 0.05))),
            figure("never measured", "jobs", Target.atMost(0), Optional.empty())),
        List.of(
            new Section(
                "Heap", "How.", List.of(new Line("heap", Measured.counted(3.14159), "MB")))));
  }

  private static Figure figure(
      String title, String unit, Target target, Optional<Measured> measured) {
    return new Figure(title.replace(' ', '-'), title, unit, target, measured);
  }
}
