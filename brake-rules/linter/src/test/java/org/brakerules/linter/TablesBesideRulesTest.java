package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.HEADER;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables that no rule reads: what may stay open, makes no difference, or is in conflict. */
class TablesBesideRulesTest {

  private static final String OPEN =
      """
      what,id,reason
      rule-near,CAMSHAFT-010,a reason
      condition-fails,CAMSHAFT-020 wheelEnd == $wheelEnd,a reason
      limit-on,camshaft.end-play.max [under quebec],a reason
      point,camshaft.crack,a reason
      source,COMMON-PRACTICE,a reason
      """;

  private static final String EQUIVALENT =
      """
      of,change,reason
      CAMSHAFT-010,something left out,a reason
      """;

  private static final String CONFLICTS =
      """
      id,what,source-a,says-a,source-b,says-b,default-takes,why,concerns
      end-play,End play,COMMON-PRACTICE,0.030 in,,0.060 in,the former,It is.,camshaft.end-play.max;CAMSHAFT-020
      """;

  private static final String DECISIONS =
      """
      table,part,sign,rules
      Shafts,camshaft,cracked,CAMSHAFT-010;camshaft.end-play.max;camshaft.crack
      """;

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws IOException {
    rules = new SmallRuleBase(folder);
    rules.write("camshaft/camshaft.drl", HEADER + SIGN_RULE + LIMIT_RULE);
    write("", "");
  }

  @Test
  void sound_tables_have_no_problem() {
    assertThat(rules.problems()).isEmpty();
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          rule-near, ~ rule-neer, ~ 2:1 [unknown-word] "rule-neer" is no kind of thing that can be open, so the table cannot be used -> write "rule-near"
          rule-near,CAMSHAFT-010 ~ rule-near,CAMSHAFT-01 ~ 2:11 [unknown-id] there is no rule "CAMSHAFT-01" -> write "CAMSHAFT-010"
          CAMSHAFT-020 wheelEnd ~ CAMSHAFT-02 wheelEnd ~ 3:17 [unknown-id] there is no rule "CAMSHAFT-02" -> write "CAMSHAFT-020"
          max [under quebec] ~ mox [under quebec] ~ 4:10 [unknown-id] there is no limit "camshaft.end-play.mox" -> write "camshaft.end-play.max"
          point,camshaft.crack ~ point,camshaft.crak ~ 5:7 [unknown-id] there is no inspection point "camshaft.crak" -> write "camshaft.crack"
          source,COMMON-PRACTICE ~ source,COMMON-PRACTISE ~ 6:8 [unknown-id] there is no source "COMMON-PRACTISE" -> write "COMMON-PRACTICE"
          CAMSHAFT-010,something ~ CAMSHAFT-011,something ~ 2:1 [unknown-id] there is no rule or limit "CAMSHAFT-011" -> write "CAMSHAFT-010"
          something left out,a reason ~ something left out, ~ 2:33 [missing-cell] reason is empty, so the row cannot be used -> state it; in this column an empty cell means nothing
          ;CAMSHAFT-020 ~ ;CAMSHAFT-021 ~ 2:94 [unknown-id] there is no rule or limit "CAMSHAFT-021" -> write "CAMSHAFT-020"
          ,COMMON-PRACTICE,0.030 ~ ,COMMON,0.030 ~ 2:19 [unknown-source] "COMMON" is not in the table of sources -> write one of "COMMON-PRACTICE", "US-ARMY-TM-5-4210-220-12"
          ;camshaft.crack ~ ;camshaft.crak ~ 2:60 [unknown-id] there is no rule, limit or inspection point "camshaft.crak" -> write "camshaft.crack"
          """)
  void a_name_that_nothing_has_is_told(String written, String instead, String problem)
      throws IOException {
    write(written, instead);
    assertThat(rules.problems()).containsExactly(problem);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          coverage-open.csv                        | what,id,reason
          camshaft/camshaft.equivalent-changes.csv | of,change,reason
          conflicts.csv                            | id,what,source-a,says-a,source-b,says-b,default-takes,why,concerns
          decision-tables.csv                      | table,part,sign,rules
          """)
  void an_empty_table_is_told(String file, String header) throws IOException {
    rules.write(file, "");
    assertThat(rules.problems())
        .containsExactly("1:1 [table-form] the table is empty -> begin it with \"" + header + "\"");
  }

  @Test
  void a_column_that_the_header_has_lost_is_told_once() throws IOException {
    rules.write("conflicts.csv", CONFLICTS.replace("why,concerns", "concerns"));
    assertThat(rules.problems())
        .containsExactly(
            "1:1 [table-form] there is no column \"why\" -> begin the table with"
                + " \"id,what,source-a,says-a,source-b,says-b,default-takes,why,concerns\"");
  }

  private void write(String written, String instead) throws IOException {
    rules.write("coverage-open.csv", OPEN.replace(written, instead));
    rules.write("camshaft/camshaft.equivalent-changes.csv", EQUIVALENT.replace(written, instead));
    rules.write("conflicts.csv", CONFLICTS.replace(written, instead));
    rules.write("decision-tables.csv", DECISIONS.replace(written, instead));
  }
}
