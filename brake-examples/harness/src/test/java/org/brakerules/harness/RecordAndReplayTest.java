package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is filed can be decided again. */
class RecordAndReplayTest {

  private static final String FINISHED = "../records/tractor-and-trailer.json";

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void every_filed_demo_job_is_decided_the_same_again(DemoJob job) throws IOException {
    CommandLineRun run = replay(CommandLineRun.of("record", job.path()).out());
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out().strip()).isEqualTo("The decision is the same.");
  }

  @Test
  void a_document_has_job_decision_final_check_and_how_long_it_is_kept() throws IOException {
    JsonNode document =
        new ObjectMapper()
            .readTree(
                CommandLineRun.of("record", DemoJob.TRACTOR_AND_TRAILER.path(), FINISHED).out());
    assertThat(document.at("/job/ruleSet").asText()).isEqualTo("us-federal");
    assertThat(document.at("/decision/ruleBase/fingerprint").asText()).hasSize(64);
    assertThat(document.at("/finalCheck/released").asBoolean()).isTrue();
    assertThat(document.at("/keep/0/keep").asText()).startsWith("1 year");
    assertThat(document.at("/keep/0/source/standing").asText()).isEqualTo("law");
  }

  @Test
  void under_quebec_no_period_of_another_law_is_named() throws IOException {
    JsonNode document =
        new ObjectMapper().readTree(CommandLineRun.of("record", DemoJob.WHEEL_ON.path()).out());
    assertThat(document.path("keep")).isEmpty();
  }

  @Test
  void a_decision_that_was_changed_afterwards_is_found() throws IOException {
    CommandLineRun run = replay(changed(text -> text.replaceFirst("\"replace\"", "\"reuse\"")));
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).contains(": was reuse", "now replace");
  }

  @Test
  void a_reading_that_was_changed_afterwards_is_found() throws IOException {
    CommandLineRun run = replay(changed(text -> text.replaceFirst("0\\.042 in", "0.012 in")));
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).contains("axle2/left/camshaft: ");
  }

  @Test
  void another_rule_base_is_named_first() throws IOException {
    CommandLineRun run =
        replay(
            changed(text -> text.replaceFirst("\"version\" ?: ?\"[^\"]*\"", "\"version\": \"9\"")));
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out().lines()).first().asString().startsWith("Another rule base made it: 9, ");
    assertThat(run.out()).contains("No part is decided otherwise.");
  }

  @Test
  void what_is_no_record_is_refused_with_what_to_name_instead() throws IOException {
    assertThat(replay("{}").err())
        .contains("holds no \"job\" and \"decision\"; name a document that brake record printed");
    assertThat(replay("{").exitCode()).isEqualTo(3);
    assertThat(CommandLineRun.of("replay", "nowhere.json").exitCode()).isEqualTo(4);
  }

  private static String changed(UnaryOperator<String> change) {
    String document = CommandLineRun.of("record", DemoJob.WORN_OUT_WHEEL_END.path()).out();
    String other = change.apply(document);
    assertThat(other).isNotEqualTo(document);
    return other;
  }

  private CommandLineRun replay(String document) throws IOException {
    Path filed = Files.writeString(folder.resolve("filed.json"), document);
    return CommandLineRun.of("replay", filed.toString());
  }
}
