package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.JobReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NeedsCommandTest {

  private static final String[] TUBE_CAMSHAFT_OUT = {
    "needs",
    "--layout",
    "camshaft=tube,drumMount=outboard",
    "--scope",
    "camshaft-out",
    "--date",
    "2026-11-20",
    "--rule-set",
    "us-federal"
  };

  @Test
  void table_says_what_where_with_what_how_and_against_which_limit() {
    CommandLineRun run = CommandLineRun.of(TUBE_CAMSHAFT_OUT);

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains("camshaft bushing, head end\n")
        .contains("radialPlay              measure radial play of the camshaft in the bushing")
        .contains("With: dial indicator. Set the dial");
    assertThat(run.unwrapped())
        .contains("Limit: at most 0.020 in, US-ARMY-TM-5-4210-220-12, 4-30.4 (government manual)");
  }

  @Test
  void limit_of_another_rule_set_is_left_out() {
    assertThat(CommandLineRun.of(TUBE_CAMSHAFT_OUT).out()).doesNotContain("120 deg");
  }

  @Test
  void without_rule_set_the_points_of_all_are_listed() {
    CommandLineRun run = CommandLineRun.of("needs", "--scope", "wheel-on");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("Limit: at most 120 deg");
  }

  @Test
  void points_as_json_carry_ids_and_limits() throws IOException {
    JsonNode points = new ObjectMapper().readTree(CommandLineRun.of(with("--json")).out());

    JsonNode play = point("camshaft-bushing.radial-play", points);
    assertThat(play.path("property").asText()).isEqualTo("radialPlay");
    assertThat(play.at("/limits/0/id").asText()).isEqualTo("camshaft-bushing.radial-play.max");
    assertThat(play.at("/limits/0/value").asText()).isEqualTo("0.020 in");
  }

  @Test
  void template_is_refused_until_every_blank_is_filled_in() {
    String template = CommandLineRun.of(with("--template")).out();

    CommandLineRun run = CommandLineRun.withInput(template, "decide", "-");

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.complaints())
        .anySatisfy(line -> assertThat(line).contains("/reference: found \"\""))
        .anySatisfy(line -> assertThat(line).contains("/radialPlay/value: found \"\""));
  }

  @Test
  void filled_in_template_is_a_job_with_every_part_the_brake_has() {
    String template = CommandLineRun.of(with("--template")).out();

    BrakeJob job = JobReader.read(filledIn(template));

    assertThat(job.parts())
        .extracting(part -> part.place())
        .containsExactlyElementsOf(
            job.wheelEnds()
                .flatMap(end -> end.layout().expectedParts(end.path(), job.scope()).stream())
                .toList());
  }

  @Test
  void template_with_readings_only_leaves_everything_undecided_until_someone_looks() {
    String template = CommandLineRun.of(with("--template")).out();

    CommandLineRun run = CommandLineRun.withInput(filledIn(template), "decide", "-");

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).doesNotContain("Goes back");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --scope=drumoff                          | --scope: found "drumoff", expected "drum-off"
          --scope=wheel-on --layout=camshaft=tub   | --layout camshaft: found "tub", expected "tube"
          --scope=wheel-on --layout=camshft=tube   | --layout camshft: found an unknown field
          --scope=wheel-on --layout=chamber.typ=30 | --layout chamber.typ: found an unknown field
          --scope=wheel-on --date=20.11.2026       | --date: found "20.11.2026", expected a date
          --scope=wheel-on --rule-set=quebeck      | --rule-set: found "quebeck"; did you mean "quebec"?
          --json                                   | Missing required option: '--scope=SCOPE'
          --scope=wheel-on --json --template       | mutually exclusive
          """)
  void wrong_value_is_answered_with_what_to_write(String args, String complaint) {
    CommandLineRun run = CommandLineRun.of(("needs " + args).split(" +"));

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints()).singleElement().asString().contains(complaint);
  }

  /** Every blank holds something of its kind. */
  private static String filledIn(String template) {
    return template
        .replace("\"reference\": \"\"", "\"reference\": \"job 1\"")
        .replace("\"builtOn\": \"\"", "\"builtOn\": \"2019-03-01\"")
        .replace("\"reservoirPressure\": \"\"", "\"reservoirPressure\": \"85 psi\"")
        .replace("\"moment\": \"\"", "\"moment\": \"as-found\"")
        .replaceAll("(?s)(Torque\": \\{\\s+\"value\": )\"\"", "$1\"20 lbf.ft\"")
        .replace("\"value\": \"\"", "\"value\": \"0.010 in\"");
  }

  private static String[] with(String option) {
    List<String> args = new ArrayList<>(List.of(TUBE_CAMSHAFT_OUT));
    args.add(option);
    return args.toArray(String[]::new);
  }

  private static JsonNode point(String id, JsonNode points) {
    for (JsonNode point : points) {
      if (point.path("id").asText().equals(id)) {
        return point;
      }
    }
    throw new AssertionError("There is no point " + id);
  }
}
