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

/** What a rule says to the reader. */
class SentencesTest {

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
            cracked. ~ cracked ~ 12:12 [sentence] @because does not end with a full stop -> write full sentences
            Replace the camshaft. ~ Replace after 5,000 miles. ~ 13:26 [number] the number 5,000 stands in @action -> write {limit} or {measured} where the rule speaks of a limit, or leave the number out
            {part} ~ {prat} ~ 12:17 [unknown-name-in-sentence] {prat} is no name that can be filled -> write "{part}"
            {part} ~ {measured} ~ 12:17 [unknown-name-in-sentence] {measured} needs a BeyondLimit pattern, and the rule has none -> add the pattern, or write one of "{part}", "{wheelEnd}"
            {part} ~ {part ~ 12:17 [unknown-name-in-sentence] a brace has no partner -> write a name in braces: {part}
            COMMON-PRACTICE ~ COMMON-PRACTICE; ~ 11:28 [unknown-source] a source is left empty -> take the semicolon out, or cite an id of sources.csv
          """)
  void a_sentence_that_cannot_be_filled_or_read_is_told(
      String written, String instead, String problem) throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @Test
  void names_of_a_limit_are_known_where_the_rule_speaks_of_one() throws Exception {
    assertThat(
            rules.with(
                LIMIT_RULE, "End play is", "At the {station} of {wheelEnd}, {beyondBy} too much:"))
        .isEmpty();
  }
}
