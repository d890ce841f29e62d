package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.HEADER;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Id and title of a rule. */
class RuleNameTest {

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
            CAMSHAFT-010 ~ CAMSHAFT-SEAL-010 ~ 10:6 [rule-id] "CAMSHAFT-SEAL-010" is no id of a rule in the folder camshaft -> begin the name with CAMSHAFT- and three digits, then the title
            CAMSHAFT-010 ~ CAMSHAFT-015 ~ 10:6 [rule-id] CAMSHAFT-015 is not in steps of ten -> write CAMSHAFT-020
            CAMSHAFT-010 ~ Camshaft-10 ~ 10:6 [rule-id] "Camshaft-10" is no id of a rule in the folder camshaft -> begin the name with CAMSHAFT- and three digits, then the title
            CAMSHAFT-010 ~ camshaft-010 ~ 10:6 [rule-id] "camshaft-010" is no id of a rule in the folder camshaft -> begin the name with CAMSHAFT- and three digits, then the title
            "CAMSHAFT-010 Cracked camshaft" ~ Cracked ~ 10:6 [rule-id] the rule has no name in quotes -> write rule "CAMSHAFT-010 Title"
            Cracked camshaft ~ (nothing) ~ 10:6 [rule-title] the rule has no title -> write the finding in a few words after the id
            Cracked camshaft ~ Cracked Camshaft ~ 10:6 [rule-title] "Camshaft" has a capital letter inside the title -> write the title in sentence case: only its first word has a capital letter
            Cracked camshaft ~ cracked camshaft ~ 10:6 [rule-title] the title "cracked camshaft" does not begin with one blank and a capital letter -> begin it like a sentence
            Cracked camshaft ~ A camshaft with a crack that the eye finds at once ~ 10:6 [rule-title] the title has 11 words -> say it in at most 10; details belong into @because
            Cracked camshaft ~ Cracked camshaft. ~ 10:6 [rule-title] the title ends with a full stop -> leave the full stop out
            Cracked camshaft ~ Cracked type 30 camshaft ~ 10:6 [rule-title] the number 30 stands in the title -> leave it out; numbers stand in the tables of limits
          """)
  void a_name_out_of_form_is_told(String written, String instead, String problem) throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @Test
  void trade_names_with_a_single_capital_are_sentence_case() throws Exception {
    assertThat(rules.with(SIGN_RULE, "Cracked camshaft", "Cracked O-ring of S-cam")).isEmpty();
  }

  @Test
  void rules_out_of_order_are_told() throws Exception {
    assertThat(rules.problemsOf(LIMIT_RULE + SIGN_RULE))
        .containsExactly(
            "20:6 [rule-id] CAMSHAFT-010 stands after CAMSHAFT-020"
                + " -> put the rules in ascending order; a new rule takes the next free number");
  }

  @Test
  void an_id_that_is_there_twice_is_told() throws Exception {
    assertThat(rules.problemsOf(SIGN_RULE + SIGN_RULE))
        .containsExactly(
            "19:6 [repeated-rule-id] CAMSHAFT-010 is there twice, first in"
                + " org/brakerules/rules/camshaft/camshaft.drl line 10"
                + " -> give this rule the next free number");
  }

  @Test
  void an_id_is_unique_over_all_folders() throws Exception {
    rules.write("drum/drum.drl", HEADER + SIGN_RULE);
    assertThat(rules.problemsOf(SIGN_RULE))
        .containsExactlyInAnyOrder(
            "10:6 [repeated-rule-id] CAMSHAFT-010 is there twice, first in"
                + " org/brakerules/rules/camshaft/camshaft.drl line 10"
                + " -> give this rule the next free number",
            "10:6 [rule-id] \"CAMSHAFT-010\" is no id of a rule in the folder drum"
                + " -> begin the name with DRUM- and three digits, then the title");
  }
}
