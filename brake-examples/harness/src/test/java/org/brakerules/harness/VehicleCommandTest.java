package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * What the demo vehicle comes to, word for word. After a wanted change write it anew with {@code
 * -Dregenerate=true} and read it.
 */
class VehicleCommandTest {

  private static final String JOB = DemoJob.TRACTOR_AND_TRAILER.path();
  private static final Path REPORT =
      Path.of("src", "test", "resources", "vehicle", "tractor-and-trailer.txt");

  @Test
  void the_demo_vehicle_is_told_axle_by_axle_and_brake_by_brake() throws IOException {
    CommandLineRun run = CommandLineRun.of("vehicle", JOB);
    if (Boolean.getBoolean("regenerate")) {
      Files.createDirectories(REPORT.getParent());
      Files.writeString(REPORT, run.out());
    }
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).isEqualTo(Files.readString(REPORT));
    assertThat(run.out().lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void json_has_every_axle_brake_and_criterion() throws IOException {
    JsonNode json = new ObjectMapper().readTree(CommandLineRun.of("vehicle", "--json", JOB).out());
    assertThat(json.path("axles").findValuesAsText("axle"))
        .containsExactly("tractor/axle1", "tractor/axle2", "trailer/axle1");
    assertThat(json.path("brakes")).hasSize(6);
    assertThat(json.path("criteria").findValuesAsText("answer")).containsExactly("open");
  }

  @Test
  void a_file_that_is_not_there_is_told() {
    CommandLineRun run = CommandLineRun.of("vehicle", "nowhere.json");
    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.err()).contains("nowhere.json: no such file");
  }
}
