package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import org.brakerules.harness.reference.ReferenceBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever rule a report prints, an auditor finds it in the reference. */
class PrintedReasonsTest {

  private static final Map<String, String> PAGES = ReferenceBook.standard().pages();
  private static final String ALL = String.join("\n", PAGES.values());

  @ParameterizedTest
  @EnumSource
  void every_rule_that_a_demo_job_prints_has_its_heading(DemoJob job) throws IOException {
    assertThat(titlesByRule(job)).isNotEmpty();
    titlesByRule(job)
        .forEach((rule, title) -> assertThat(ALL).containsPattern("\n##+ " + rule + " " + title));
  }

  @Test
  void the_general_rules_stand_on_a_page_of_their_own() throws IOException {
    Map<String, String> general = new TreeMap<>();
    for (DemoJob job : DemoJob.values()) {
      titlesByRule(job)
          .forEach(
              (rule, title) -> {
                if (rule.startsWith("GENERAL-")) {
                  general.put(rule, title);
                }
              });
    }
    assertThat(general).containsKeys("GENERAL-010", "GENERAL-020", "GENERAL-030");
    assertThat(general)
        .allSatisfy(
            (rule, title) ->
                assertThat(PAGES.get("general-rules.md")).contains("## " + rule + " " + title));
  }

  private static Map<String, String> titlesByRule(DemoJob job) throws IOException {
    Map<String, String> titles = new TreeMap<>();
    String json = CommandLineRun.of("decide", "--json", job.path()).out();
    for (JsonNode reasons : new ObjectMapper().readTree(json).findValues("reasons")) {
      reasons.forEach(
          reason -> titles.put(reason.path("rule").asText(), reason.path("title").asText()));
    }
    return titles;
  }
}
