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

  @Test
  void both_curly_quotes_are_told() throws Exception {
    assertThat(rules.with(SIGN_RULE, "\"COMMON-PRACTICE\"", "\u201CCOMMON-PRACTICE\u201D"))
        .containsExactly(
            "11:11 [curly-quote] \u201C is a curly quote -> write the straight \"",
            "11:27 [curly-quote] \u201D is a curly quote -> write the straight \"");
  }
}
