package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.HEADER;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the standard SARIF 2.1.0 requires of a log, by its sections; from memory. */
class SarifLogTest {

  @TempDir Path folder;
  private List<LintProblem> problems = List.of();
  private JsonNode log = new ObjectMapper().createObjectNode();

  @BeforeEach
  void aRuleBaseWithTwoProblems() throws Exception {
    SmallRuleBase rules = new SmallRuleBase(folder);
    rules.write("cautions.csv", "id,from,text,source\nchock,wheel-on,Chock.,MAKERS\n");
    rules.write("camshaft/camshaft.drl", HEADER + SIGN_RULE.replace("crack ==", "crak =="));
    problems = RuleLinter.lint(folder);
    log = new ObjectMapper().readTree(SarifLog.of(problems, folder));
  }

  @Test
  void log_names_its_version_and_schema() {
    assertThat(log.path("version").textValue()).isEqualTo("2.1.0"); // 3.13.2, required
    assertThat(URI.create(log.path("$schema").textValue()).isAbsolute()).isTrue(); // 3.13.3
    assertThat(log.path("runs").size()).isEqualTo(1); // 3.13.4, required
  }

  @Test
  void run_names_its_tool_and_every_kind_of_problem_once() {
    JsonNode driver = run().path("tool").path("driver"); // 3.14.6 and 3.18.2, required
    assertThat(driver.path("name").textValue()).isEqualTo("brake-rules-linter"); // 3.19.8
    List<String> ids = new ArrayList<>();
    for (JsonNode rule : driver.path("rules")) {
      ids.add(rule.path("id").textValue()); // 3.49.3, required
      assertThat(rule.path("shortDescription").path("text").textValue()).endsWith("."); // 3.49.9
      assertThat(rule.path("defaultConfiguration").path("level").textValue()).isEqualTo("error");
    }
    assertThat(ids).doesNotHaveDuplicates().hasSize(LintKind.values().length);
  }

  @Test
  void every_problem_is_a_result_with_rule_level_message_and_place() {
    assertThat(run().path("results").size()).isEqualTo(problems.size()).isEqualTo(2);
    for (int i = 0; i < problems.size(); i++) {
      JsonNode result = run().path("results").get(i);
      LintProblem problem = problems.get(i);
      assertThat(result.path("ruleId").textValue()).isEqualTo(problem.kind().id()); // 3.27.5
      assertThat(result.path("level").textValue()).isEqualTo("error"); // 3.27.10
      assertThat(result.path("message").path("text").textValue()) // 3.27.11, required
          .contains(problem.message(), problem.remedy());
      JsonNode place = result.path("locations").get(0).path("physicalLocation"); // 3.27.12
      assertThat(place.path("artifactLocation").path("uri").textValue()).isEqualTo(problem.file());
      assertThat(place.path("region").path("startLine").intValue()).isEqualTo(problem.line());
      assertThat(place.path("region").path("startColumn").intValue()).isEqualTo(problem.column());
    }
  }

  @Test
  void files_are_found_from_the_folder_that_was_linted() {
    JsonNode file = run().path("results").get(0).path("locations").get(0).path("physicalLocation");
    JsonNode location = file.path("artifactLocation");
    String base =
        run()
            .path("originalUriBaseIds")
            .path(location.path("uriBaseId").textValue())
            .path("uri")
            .textValue();
    assertThat(base).endsWith("/"); // 3.14.14
    assertThat(URI.create(location.path("uri").textValue()).isAbsolute()).isFalse(); // 3.4.3
    assertThat(Path.of(URI.create(base).resolve(location.path("uri").textValue()))).isRegularFile();
  }

  @Test
  void columns_are_counted_in_the_units_of_java() {
    assertThat(run().path("columnKind").textValue()).isEqualTo("utf16CodeUnits"); // 3.14.17
  }

  @Test
  void a_sound_rule_base_has_an_empty_list_of_results() throws Exception {
    JsonNode sound = new ObjectMapper().readTree(SarifLog.of(List.of(), folder));
    assertThat(sound.path("runs").get(0).path("results").isArray()).isTrue(); // 3.14.23
    assertThat(sound.path("runs").get(0).path("results")).isEmpty();
  }

  private JsonNode run() {
    return log.path("runs").get(0);
  }
}
