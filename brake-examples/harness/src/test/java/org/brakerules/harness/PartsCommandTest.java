package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The parts lists of the demo jobs with the kits of the demo shelf, word for word. After a wanted
 * change write them anew with {@code -Dregenerate=true} and read what changed.
 */
class PartsCommandTest {

  private static final String SHELF = Path.of("..", "kits", "harrowmere-shelf.json").toString();

  @ParameterizedTest
  @EnumSource
  void demo_job_gives_the_list_that_was_agreed_on(DemoJob job) throws IOException {
    CommandLineRun run = CommandLineRun.of("parts", "--kits", SHELF, job.path());
    if (Boolean.getBoolean("regenerate")) {
      Files.createDirectories(job.parts().getParent());
      Files.writeString(job.parts(), run.out());
    }
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).isEqualTo(Files.readString(job.parts()));
    assertThat(run.out().lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void without_a_shelf_nothing_is_said_of_kits() {
    assertThat(CommandLineRun.of("parts", DemoJob.CLEAN_RELINE.path()).out())
        .contains("Parts list of brake job")
        .doesNotContain("Kits for");
  }

  @Test
  void json_and_csv_are_the_same_list() throws IOException {
    CommandLineRun json = CommandLineRun.of("parts", "--json", DemoJob.CLEAN_RELINE.path());
    CommandLineRun csv = CommandLineRun.of("parts", "--csv", DemoJob.CLEAN_RELINE.path());
    JsonNode tree = new ObjectMapper().readTree(json.out());
    int lines = tree.path("vehicle").size();
    for (String together : new String[] {"wheelEnds", "axles"}) {
      for (JsonNode one : tree.path(together)) {
        lines += one.path("lines").size();
      }
    }
    assertThat(csv.out().lines()).hasSize(lines + 1);
  }

  @Test
  void json_and_csv_at_once_are_wrong_usage() {
    CommandLineRun run = CommandLineRun.of("parts", "--json", "--csv", DemoJob.FIRST_JOB.path());

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void what_is_wrong_with_the_shelf_is_told_with_its_file_and_line(@TempDir Path folder)
      throws IOException {
    Path shelf = folder.resolve("shelf.json");
    Files.writeString(
        shelf,
        """
        { "kits": [ { "id": "A", "title": "a", "for": "piece",
          "contents": [ { "item": "roler-clip", "count": 1 } ] } ] }
        """);
    CommandLineRun run =
        CommandLineRun.of("parts", "--kits", shelf.toString(), DemoJob.FIRST_JOB.path());

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.complaints())
        .containsExactly(
            shelf
                + ": line 2, column 27, /kits/0/contents/0/item: found \"roler-clip\", expected"
                + " \"roller-clip\", the nearest known item");
  }

  @Test
  void shelf_that_is_not_there_and_job_that_is_none_are_told() {
    CommandLineRun nowhere =
        CommandLineRun.of("parts", "--kits", "nowhere.json", DemoJob.FIRST_JOB.path());
    CommandLineRun noJob = CommandLineRun.withInput("{}", "parts", "-");

    assertThat(nowhere.exitCode()).isEqualTo(4);
    assertThat(nowhere.complaints()).containsExactly("nowhere.json: no such file");
    assertThat(noJob.exitCode()).isEqualTo(3);
    assertThat(noJob.complaints()).allMatch(line -> line.startsWith("standard input: "));
  }
}
