package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values, numbers and sizes in conditions. */
class ValuesTest {

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws Exception {
    rules = new SmallRuleBase(folder);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            crack == Sign.SEEN ~ hand == Sign.SEEN ~ 15:29 [wrong-value] hand is never Sign.SEEN -> write one of "Hand.LEFT", "Hand.RIGHT", "Hand.UNKNOWN"
            crack == Sign.SEEN ~ hand == "left" ~ 15:29 [wrong-value] hand is never "left" -> write one of "Hand.LEFT", "Hand.RIGHT", "Hand.UNKNOWN"
            Sign.SEEN ~ 5 ~ 15:30 [wrong-value] crack is never 5 -> write Sign.SEEN
            crack == Sign.SEEN ~ hand < Hand.LEFT ~ 15:26 [comparison] < compares sizes, which rules do not do -> put the limit into camshaft.limits.csv and write BeyondLimit( limit == "its id", $wheelEnd : wheelEnd )
          """)
  void a_value_that_never_matches_is_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            limit == ~ limit != ~ 15:22 [wrong-value] limit != would hold for every other limit -> write == and name the one that is meant
            "camshaft.end-play.max" ~ 5 ~ 15:25 [wrong-value] limit is never 5 -> write a text in double quotes, such as the id of a limit
          """)
  void a_limit_is_named_by_its_id(String written, String instead, String problem) throws Exception {
    assertThat(rules.with(LIMIT_RULE, written, instead)).containsExactly(problem);
  }

  @Test
  void a_reading_held_against_a_number_is_told() throws Exception {
    assertThat(rules.with(SIGN_RULE, "crack == Sign.SEEN", "endPlay > 0.030"))
        .containsExactly(
            "15:29 [comparison] > compares sizes, which rules do not do -> put the limit into"
                + " camshaft.limits.csv and write BeyondLimit( limit == \"its id\","
                + " $wheelEnd : wheelEnd )",
            "15:31 [number] the number 0.030 stands in the conditions -> put it into"
                + " camshaft.limits.csv and write BeyondLimit( limit == \"its id\","
                + " $wheelEnd : wheelEnd )");
  }

  @Test
  void a_reading_in_a_condition_is_told() throws Exception {
    assertThat(rules.with(SIGN_RULE, "crack == Sign.SEEN", "$play : endPlay, endPlay == $play"))
        .containsExactly(
            "15:38 [measurement] endPlay is a reading, and rules do not look at readings"
                + " -> write BeyondLimit( limit == \"id of its limit\", $wheelEnd : wheelEnd )");
  }
}
