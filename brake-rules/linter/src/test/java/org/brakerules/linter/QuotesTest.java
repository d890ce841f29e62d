package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quotes that are left open, curly or single. */
class QuotesTest {

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
            camshaft" ~ camshaft ~ 10:6 [unclosed-quote] the quote before "CAMSHAFT-010 Cracked..." is not closed on its line -> close it with " on the same line; inside a sentence leave quotes out
            PRACTICE") ~ PRACTICE) ~ 11:11 [unclosed-quote] the quote before "COMMON-PRACTICE)" is not closed on its line -> close it with " on the same line; inside a sentence leave quotes out
            cracked.") ~ cracked.) ~ 12:12 [unclosed-quote] the quote before "The {part} is cracke..." is not closed on its line -> close it with " on the same line; inside a sentence leave quotes out
            The {part} ~ The shaft’s {part} ~ 12:22 [curly-quote] ’ is a curly quote -> write the straight '
            @source("COMMON-PRACTICE") ~ @source('COMMON-PRACTICE') ~ 11:11 [single-quote] 'COMMON-PRACTICE' stands in single quotes -> write "COMMON-PRACTICE"
          """)
  void a_quote_that_breaks_a_rule_is_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            "Replace the camshaft." ~ “Replace the camshaft." ~ 13:11 [curly-quote] “ is a curly quote -> write the straight "
            "Replace the camshaft." ~ "Replace the camshaft.” ~ 13:33 [curly-quote] ” is a curly quote -> write the straight "
            "CAMSHAFT-010 Cracked camshaft" ~ "CAMSHAFT-010 Cracked camshaft” ~ 10:36 [curly-quote] ” is a curly quote -> write the straight "
            the camshaft. ~ the camshaft’s. ~ 13:32 [curly-quote] ’ is a curly quote -> write the straight '
          """)
  void a_curly_quote_hides_nothing_else_of_its_rule(String written, String instead, String problem)
      throws Exception {
    String misspelt = SIGN_RULE.replace("Sign.SEEN", "Sign.SEAN");
    assertThat(rules.with(misspelt, written, instead))
        .containsExactly(
            problem, "15:35 [unknown-constant] Sign has no \"SEAN\" -> write \"SEEN\"");
  }

  @Test
  void curly_quotes_inside_a_sentence_are_to_be_left_out() throws Exception {
    assertThat(rules.with(SIGN_RULE, "Replace the camshaft", "Replace the «camshaft»"))
        .containsExactly(
            "13:24 [curly-quote] « is a curly quote"
                + " -> leave it out; inside a sentence stand no quotes",
            "13:33 [curly-quote] » is a curly quote"
                + " -> leave it out; inside a sentence stand no quotes");
  }

  @Test
  void single_curly_quotes_around_a_text_are_read_as_double_ones() throws Exception {
    assertThat(rules.with(SIGN_RULE, "\"COMMON-PRACTICE\"", "\u2018COMMON-PRACTICE\u2019"))
        .containsExactly(
            "11:11 [curly-quote] \u2018 is a curly quote -> write the straight \"",
            "11:27 [curly-quote] \u2019 is a curly quote -> write the straight \"");
  }

  @Test
  void both_curly_quotes_are_told() throws Exception {
    assertThat(rules.with(SIGN_RULE, "\"COMMON-PRACTICE\"", "\u201CCOMMON-PRACTICE\u201D"))
        .containsExactly(
            "11:11 [curly-quote] \u201C is a curly quote -> write the straight \"",
            "11:27 [curly-quote] \u201D is a curly quote -> write the straight \"");
  }
}
