package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import org.brakerules.BrakeRules;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.JobReader;
import org.brakerules.work.FittedPart.Use;
import org.brakerules.work.WorkPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/**
 * The order of work of the demo jobs, word for word. After a wanted change write them anew with
 * {@code -Dregenerate=true} and read again what changed.
 */
class PlanCommandTest {

  private static final Set<DemoJob> WHOLE = Set.of(DemoJob.TRACTOR_AND_TRAILER);

  @ParameterizedTest
  @EnumSource(
      mode = Mode.INCLUDE,
      names = {"CLEAN_RELINE", "DAMAGED_SPRING_BRAKE", "FINISHED_REBUILD", "CRACKED_DRUM"})
  void demo_job_gives_the_plan_that_was_read_and_found_right(DemoJob job) throws IOException {
    CommandLineRun run = CommandLineRun.of("plan", job.path());
    if (Boolean.getBoolean("regenerate")) {
      Files.createDirectories(job.plan().getParent());
      Files.writeString(job.plan(), run.out());
    }
    assertThat(run.out()).isEqualTo(Files.readString(job.plan()));
  }

  @ParameterizedTest
  @EnumSource
  void every_demo_job_has_a_plan_and_the_exit_code_tells_whether_it_is_whole(DemoJob job) {
    CommandLineRun run = CommandLineRun.of("plan", job.path());
    assertThat(run.exitCode()).isEqualTo(WHOLE.contains(job) ? 0 : 1);
    assertThat(run.err()).isEmpty();
    assertThat(run.out().lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100))
        .anySatisfy(line -> assertThat(line).contains("ARRIVE-010, vehicle"));
  }

  @ParameterizedTest
  @EnumSource
  void no_demo_job_puts_a_replaced_part_back(DemoJob job) throws IOException {
    BrakeJob read = JobReader.read(job.file());
    WorkPlan plan = BrakeRules.standard().plan(read);
    List<String> replaced =
        BrakeRules.standard().decide(read).decisions().stream()
            .filter(one -> one.disposition().name().equals("REPLACE"))
            .map(one -> one.part().toString())
            .toList();
    plan.steps().stream()
        .flatMap(step -> step.parts().stream())
        .filter(part -> part.use() != Use.NEW)
        .forEach(part -> assertThat(replaced).doesNotContain(part.part().toString()));
  }

  @Test
  void json_has_every_step_of_the_text() throws IOException {
    String path = DemoJob.CLEAN_RELINE.path();
    JsonNode json = new ObjectMapper().readTree(CommandLineRun.of("plan", "--json", path).out());
    String text = CommandLineRun.of("plan", path).unwrapped();
    assertThat(json.path("steps")).hasSizeGreaterThan(50);
    for (JsonNode step : json.path("steps")) {
      assertThat(text)
          .contains(step.path("number").asInt() + " [ ] " + step.path("id").asText())
          .contains(step.path("text").asText());
      assertThat(step.path("because")).isNotEmpty();
      assertThat(step.path("source")).isNotEmpty();
    }
    assertThat(json.path("cautions").findValuesAsText("id")).contains("wheel-nuts");
  }

  @Test
  void a_job_that_is_none_is_told_where() {
    CommandLineRun run = CommandLineRun.withInput("{\"date\": 5}", "plan", "-");
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints()).isNotEmpty().allMatch(line -> line.startsWith("standard input: "));
  }
}
