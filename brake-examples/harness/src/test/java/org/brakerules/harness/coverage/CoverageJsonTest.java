package org.brakerules.harness.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.brakerules.trial.coverage.ListedItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoverageJsonTest {

  private final JsonNode json = json(SmallCoverage.whole());

  @Test
  void fields_stand_in_a_fixed_order() {
    assertThat(fields(json))
        .containsExactly(
            "ruleBase",
            "cases",
            "madeJobs",
            "components",
            "open",
            "mayStayOpen",
            "listedButNotOpen",
            "shownByMadeJobsAlone",
            "counts",
            "rules",
            "limits",
            "points",
            "sources");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /ruleBase/fingerprint                       | abc
          /cases                                      | 2
          /madeJobs                                   | 3
          /components/1                               | hub
          /open/0/what                                | condition-fails
          /open/0/id                                  | HOSE-010 Hose( leak == Sign.SEEN )
          /open/0/component                           | hose
          /open/1/what                                | limit-no-reading
          /counts/0/conditions/shown                  | 0
          /counts/0/conditions/of                     | 1
          /counts/2/component                         | all
          /counts/2/open                              | 4
          /shownByMadeJobsAlone/0                     | hub.run-out.max
          /rules/0/fires/0/case                       | A hose that <leaks>
          /rules/0/near/0/case                        | A tight hose
          /rules/0/near/6/component                   | hub
          /rules/0/conditions/0/holds/count           | 1
          /rules/0/conditions/0/fails/count           | 0
          /rules/0/conditions/0/failsBeside/count     | 0
          /limits/0/sides/0/side                      | inside
          /limits/0/sides/0/madeJobs                  | 2
          /limits/0/sides/2/side                      | no-reading
          /points/0/rules/0                           | HOSE-010
          /sources/0/clauses/1/limits/0               | hub.play.max
          """)
  void value_is_where_a_program_looks_for_it(String pointer, String value) {
    assertThat(json.at(pointer).asText()).isEqualTo(value);
  }

  @Test
  void reasons_are_told() {
    JsonNode listed =
        json(SmallCoverage.whole(new ListedItem("point", "hub.crack", "No rule yet")));

    assertThat(listed.at("/mayStayOpen/0/reason").asText()).isEqualTo("No rule yet");
    assertThat(listed.at("/open").findValuesAsText("id")).doesNotContain("hub.crack");
  }

  private static JsonNode json(CoverageReport report) {
    try {
      return new ObjectMapper().readTree(CoverageJson.of(report));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> fields(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
