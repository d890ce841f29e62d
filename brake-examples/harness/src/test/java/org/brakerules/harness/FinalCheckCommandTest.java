package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FinalCheckCommandTest {

  private static final Path RECORD = Path.of("..", "records", "finished-rebuild.json");
  private static final String JOB = DemoJob.FINISHED_REBUILD.path();

  @Test
  void the_demo_record_releases_its_wheel_end_and_not_the_vehicle_with_new_linings_on_one_side() {
    CommandLineRun run = CommandLineRun.of("final-check", JOB, RECORD.toString());
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out())
        .contains("axle2/left: released", "vehicle: not released", "open")
        .contains("not recorded yet (after the release)");
    assertThat(run.unwrapped())
        .contains("axle2/right, the other end of the axle, is not in this job");
    assertThat(run.out().lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void without_a_record_every_check_is_listed_with_how_it_is_proved() {
    CommandLineRun run = CommandLineRun.of("final-check", JOB);
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out())
        .contains("FINAL-010", "FINAL-180", "not recorded yet")
        .doesNotContain("recorded as passed");
  }

  @Test
  void the_demo_vehicle_is_released_with_its_record() {
    Path record = RECORD.resolveSibling("tractor-and-trailer.json");
    CommandLineRun run =
        CommandLineRun.of("final-check", DemoJob.TRACTOR_AND_TRAILER.path(), record.toString());
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("trailer/axle1/right: released", "vehicle: released");
  }

  @Test
  void a_stroke_over_its_limit_keeps_it_back_and_says_what_to_do(@TempDir Path folder)
      throws IOException {
    Path record =
        Files.writeString(
            folder.resolve("record.json"),
            Files.readString(RECORD).replace("\"1.7 in\"", "\"2.1 in\""));
    CommandLineRun run = CommandLineRun.of("final-check", JOB, record.toString());
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.unwrapped())
        .contains("axle2/left: not released")
        .contains("FAILED 2.1 in is beyond its limit")
        .contains("never turn it by hand as a repair");
  }

  @Test
  void json_says_what_the_text_says() throws IOException {
    JsonNode json =
        new ObjectMapper()
            .readTree(CommandLineRun.of("final-check", "--json", JOB, RECORD.toString()).out());
    assertThat(json.path("released").asBoolean()).isFalse();
    assertThat(json.at("/places/0/released").asBoolean()).isTrue();
    assertThat(json.at("/places/0/on").asText()).isEqualTo("axle2/left");
    assertThat(json.at("/places/0/checks")).hasSizeGreaterThan(20);
    assertThat(json.at("/places/0/checks/0/status").asText()).isEqualTo("passed");
  }

  @Test
  void what_is_wrong_with_the_record_is_told_with_its_name(@TempDir Path folder)
      throws IOException {
    Path record =
        Files.writeString(
            folder.resolve("record.json"),
            Files.readString(RECORD).replace("FINAL-010", "FINAL-130"));
    CommandLineRun run = CommandLineRun.of("final-check", JOB, record.toString());
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints())
        .singleElement()
        .asString()
        .startsWith(record + ": \"FINAL-130\" is no check that the plan asks for at axle2/left");
  }

  @Test
  void a_record_that_is_none_or_is_not_there_is_told(@TempDir Path folder) throws IOException {
    Path record = Files.writeString(folder.resolve("record.json"), "{}");
    assertThat(CommandLineRun.of("final-check", JOB, record.toString()).complaints())
        .containsExactly(
            record
                + ": line 1, column 1: found no \"records\", expected an array of records, at least"
                + " one");
    CommandLineRun missing = CommandLineRun.of("final-check", JOB, "nowhere.json");
    assertThat(missing.exitCode()).isEqualTo(4);
    assertThat(missing.complaints()).containsExactly("nowhere.json: no such file");
    assertThat(CommandLineRun.of("final-check", JOB, folder.toString()).complaints())
        .containsExactly(folder + ": is a directory; name a file with a record");
  }
}
