package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.HEADER;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
import static org.brakerules.linter.SmallRuleBase.QUEBEC;
import static org.brakerules.linter.SmallRuleBase.RULE_SETS;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The folders of the rule sets, and the slips that can be made in them. */
class RuleSetFoldersTest {

  private static final String FOLDER = "rule-sets/quebec/";
  private static final String LIMITS =
      "id,part,property,comparison,value,station,methods,moment,applies-to,from,to,source,note\n";

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws IOException {
    rules = new SmallRuleBase(folder);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          camshaft.end-play.max,less than,COMMON-PRACTICE,   ~ -
          camshaft.end-pley.max,less than,COMMON-PRACTICE,   ~ 2:1 [unknown-id] there is no limit "camshaft.end-pley.max" -> write "camshaft.end-play.max"
          camshaft.end-play.max,below,COMMON-PRACTICE,       ~ 2:23 [unknown-word] "below" is no comparison, so the table cannot be used -> write one of "at least", "at most", "less than", "more than"
          camshaft.end-play.max,at least,COMMON-PRACTICE,    ~ 2:23 [unknown-word] "camshaft.end-play.max" passes "at most", and "at least" would pass what fails everywhere else -> write "at most" or "less than"
          camshaft.end-play.max,less than,COMMON-PRACTISE,   ~ 2:33 [unknown-source] "COMMON-PRACTISE" is not in the table of sources -> write "COMMON-PRACTICE"
          camshaft.end-play.max,less than,,                  ~ 2:33 [unknown-source] a source is left empty -> take the semicolon out, or cite an id of sources.csv
          """)
  void a_row_of_comparisons_is_told(String row, String problem) throws IOException {
    rules.write(FOLDER + "comparisons.csv", "limit,comparison,source,note\n" + row + "\n");
    expect(problem);
  }

  @Test
  void one_limit_is_held_on_one_side_only() throws IOException {
    String row = "camshaft.end-play.max,less than,COMMON-PRACTICE,\n";
    rules.write(FOLDER + "comparisons.csv", "limit,comparison,source,note\n" + row + row);
    expect(
        "3:1 [table-id] \"camshaft.end-play.max\" is there twice for one rule set -> take one out");
  }

  @Test
  void a_limit_of_one_rule_set_stands_in_no_row_of_all() throws IOException {
    rules.write(
        FOLDER + "limits.csv",
        LIMITS
            + "camshaft.rotation.max,camshaft,rotation,at most,120 deg,,,,,,,COMMON-PRACTICE,\n");
    rules.write(
        FOLDER + "comparisons.csv",
        "limit,comparison,source,note\ncamshaft.rotation.max,less than,COMMON-PRACTICE,\n");
    assertThat(rules.problems())
        .contains(
            "2:1 [unknown-id] every row of \"camshaft.rotation.max\" belongs to one rule set, so"
                + " there is none to hold -> write \"camshaft.end-play.max\"");
  }

  @Test
  void a_second_figure_for_a_limit_of_all_is_told_with_the_file_of_the_first() throws IOException {
    rules.write(
        FOLDER + "limits.csv",
        LIMITS
            + "camshaft.end-play.max,camshaft,endPlay,at most,0.040 in,spline-end,dial-indicator"
            + ",,,,,COMMON-PRACTICE,\n");
    assertThat(rules.problems())
        .anySatisfy(
            problem ->
                assertThat(problem)
                    .contains("[limit-overlap]")
                    .contains("line 2 of org/brakerules/rules/rule-sets/quebec/limits.csv"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          CAMSHAFT-010,COMMON-PRACTICE,the text takes it back ~ -
          CAMSHAFT-011,COMMON-PRACTICE,the text takes it back ~ 2:1 [unknown-id] there is no rule "CAMSHAFT-011" -> write "CAMSHAFT-010"
          CAMSHAFT-010,COMMON-PRACTICE,                       ~ 2:30 [missing-cell] reason is empty, so the row cannot be used -> state it; in this column an empty cell means nothing
          """)
  void a_rule_that_is_off_is_told(String row, String problem) throws IOException {
    rules.write("camshaft/camshaft.drl", HEADER + SIGN_RULE + LIMIT_RULE);
    rules.write(FOLDER + "rules-off.csv", "rule,source,reason\n" + row + "\n");
    expect(problem);
  }

  @Test
  void a_folder_that_the_table_does_not_name_is_told() throws IOException {
    rules.write("rule-sets/us-maine/rule-set.csv", QUEBEC.replace("Quebec", "Maine"));
    expect(
        "1:1 [unknown-id] rule-sets.csv does not name \"us-maine\", so no job can"
            + " -> add the line us-maine to rule-sets.csv");
  }

  @Test
  void a_name_without_a_folder_is_told() throws IOException {
    rules.write("rule-sets.csv", RULE_SETS + "us-maine\n");
    assertThat(rules.problems())
        .singleElement()
        .asString()
        .startsWith("1:1 [table-form] there is no such table -> add it with \"title,");
  }

  @Test
  void a_rule_set_has_one_row() throws IOException {
    rules.write(FOLDER + "rule-set.csv", QUEBEC + "Ontario,,,,,\n");
    expect(
        "1:1 [table-form] a rule set has one row, and here are 2"
            + " -> give each rule set a folder of its own");
  }

  @Test
  void a_rule_set_cites_sources_that_there_are() throws IOException {
    rules.write(
        FOLDER + "rule-set.csv", QUEBEC.replace("psi,COMMON-PRACTICE", "psi,COMON-PRACTICE"));
    expect(
        "2:23 [unknown-source] \"COMON-PRACTICE\" is not in the table of sources -> write \"COMMON-PRACTICE\"");
  }

  @Test
  void a_file_that_nobody_reads_is_told() throws IOException {
    rules.write(FOLDER + "limit.csv", LIMITS);
    expect("1:1 [stray-file] nobody reads \"limit.csv\" of a rule set -> write \"limits.csv\"");
  }

  private void expect(String problem) throws IOException {
    if (problem.equals("-")) {
      assertThat(rules.problems()).isEmpty();
    } else {
      assertThat(rules.problems()).containsExactly(problem);
    }
  }
}
