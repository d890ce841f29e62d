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
            CAMSHAFT-010 ~ CAMSHAFT-015 ~ 10:6 [rule-id] CAMSHAFT-015 is not in steps of ten -> write CAMSHAFT-020; if the rule stands in decision-tables.csv or in cases, its id changes there too
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
                + " -> put the rule back to its place if it was only moved; a new rule takes the next"
                + " free id, CAMSHAFT-030, at the end of the file");
  }

  @Test
  void a_rule_without_room_between_two_steps_goes_to_the_end() throws Exception {
    String between = SIGN_RULE.replace("CAMSHAFT-010 Cracked", "CAMSHAFT-015 Flat");
    assertThat(rules.problemsOf(SIGN_RULE + between.replace("crack ==", "flat ==") + LIMIT_RULE))
        .containsExactly(
            "19:6 [rule-id] CAMSHAFT-015 is not in steps of ten -> write CAMSHAFT-030 and put the"
                + " rule at the end of the file; if the rule stands in decision-tables.csv or in"
                + " cases, its id changes there too");
  }

  @Test
  void a_number_between_two_steps_may_have_been_the_lower_one() throws Exception {
    assertThat(
            rules.problemsOf(
                SIGN_RULE
                    + LIMIT_RULE.replace("-020", "-025")
                    + SIGN_RULE.replace("CAMSHAFT-010", "CAMSHAFT-030").replace("crack ", "flat ")))
        .containsExactly(
            "19:6 [rule-id] CAMSHAFT-025 is not in steps of ten -> write CAMSHAFT-020; if the rule"
                + " stands in decision-tables.csv or in cases, its id changes there too");
  }

  @Test
  void each_rule_that_goes_to_the_end_is_told_an_id_of_its_own() throws Exception {
    String flat = SIGN_RULE.replace("crack ", "flat ");
    String rust = SIGN_RULE.replace("crack ", "rust ");
    assertThat(
            rules.problemsOf(
                SIGN_RULE
                    + flat.replace("-010", "-013")
                    + rust.replace("-010", "-016")
                    + LIMIT_RULE))
        .extracting(problem -> problem.replaceAll(".* -> (.*);.*", "$1"))
        .containsExactly(
            "write CAMSHAFT-030 and put the rule at the end of the file",
            "write CAMSHAFT-040 and put the rule at the end of the file");
    assertThat(
            rules.problemsOf(
                SIGN_RULE + flat.replace("-010", "-013") + rust.replace("-010", "-016")))
        .extracting(problem -> problem.replaceAll(".* -> (.*);.*", "$1"))
        .containsExactly(
            "write CAMSHAFT-020", "write CAMSHAFT-030 and put the rule at the end of the file");
  }

  @Test
  void a_rule_without_a_name_is_told_the_id_of_its_place() throws Exception {
    String unnamed = LIMIT_RULE.replaceFirst("\".*\"", "Cracked");
    assertThat(rules.problemsOf(SIGN_RULE + unnamed))
        .containsExactly(
            "19:6 [rule-id] the rule has no name in quotes -> write rule \"CAMSHAFT-020 Title\"");
  }

  @Test
  void an_id_that_is_there_twice_is_told() throws Exception {
    assertThat(rules.problemsOf(SIGN_RULE + SIGN_RULE))
        .containsExactly(
            "19:6 [repeated-rule-id] CAMSHAFT-010 is there twice, first in"
                + " org/brakerules/rules/camshaft/camshaft.drl line 10"
                + " -> take one out if the rule was only moved; a new rule takes the next free id,"
                + " CAMSHAFT-020, at the end of the file");
  }

  @Test
  void an_id_that_is_there_twice_is_not_told_as_out_of_order_too() throws Exception {
    assertThat(rules.problemsOf(SIGN_RULE + LIMIT_RULE + SIGN_RULE))
        .containsExactly(
            "29:6 [repeated-rule-id] CAMSHAFT-010 is there twice, first in"
                + " org/brakerules/rules/camshaft/camshaft.drl line 10"
                + " -> take one out if the rule was only moved; a new rule takes the next free id,"
                + " CAMSHAFT-030, at the end of the file");
  }

  @Test
  void an_id_is_unique_over_all_folders() throws Exception {
    rules.write("drum/drum.drl", HEADER + SIGN_RULE);
    assertThat(rules.problemsOf(SIGN_RULE))
        .containsExactlyInAnyOrder(
            "10:6 [repeated-rule-id] CAMSHAFT-010 is there twice, first in"
                + " org/brakerules/rules/camshaft/camshaft.drl line 10"
                + " -> take one out if the rule was only moved; a new rule takes the next free id,"
                + " DRUM-010, at the end of the file",
            "10:6 [rule-id] \"CAMSHAFT-010\" is no id of a rule in the folder drum"
                + " -> begin the name with DRUM- and three digits, then the title");
  }
}
