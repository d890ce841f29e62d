package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source, finding and action of a rule. */
class MetadataTest {

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
            @action ~ @source("COMMON-PRACTICE")\\n  @action ~ 13:4 [repeated-metadata] @source is there twice; the rule engine would keep the first without a word -> write it once; put "; " between sources
            @because ~ @becuase ~ 12:4 [unknown-metadata] @becuase is not read by anyone -> write @because
            @source("COMMON-PRACTICE") ~ @source(id = "COMMON-PRACTICE") ~ 11:4 [metadata-form] @source has keys and values -> write @source("..."), one text in double quotes
            @source("COMMON-PRACTICE") ~ @source("COMMON-PRACTICE", "X") ~ 11:4 [metadata-form] @source holds something else than one text -> write @source("..."), one text in double quotes
            @source("COMMON-PRACTICE") ~ @source ~ 11:4 [metadata-form] @source says nothing -> write @source("..."), one text in double quotes
            The {part} is ~ The "S" of the {part} is ~ 12:4 [metadata-form] @because holds something else than one text -> write @because("..."), one text in double quotes
          """)
  void metadata_that_nobody_can_rely_on_is_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            when\\n ~ salience 10\\nwhen\\n ~ 14:1 [rule-attribute] salience stands before when and is no metadata -> take it out; no attribute changes when or in which order a rule fires, the worst verdict wins
            Cracked camshaft" ~ Cracked camshaft" extends "X" ~ 10:38 [rule-attribute] extends stands before when and is no metadata -> take it out; no attribute changes when or in which order a rule fires, the worst verdict wins
          """)
  void an_attribute_is_told(String written, String instead, String problem) throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @ParameterizedTest
  @CsvSource({
    "source, 'add @source(\"COMMON-PRACTICE\"), an id of sources.csv'",
    "because, 'add @because(\"...\"), what was found, in full sentences'",
    "action, 'add @action(\"...\"), what to do, in full sentences'",
  })
  void a_missing_key_is_told_with_an_example(String key, String remedy) throws Exception {
    String without = SIGN_RULE.replaceAll("  @" + key + ".*\n", "");
    assertThat(rules.problemsOf(without))
        .containsExactly("10:6 [missing-metadata] the rule has no @" + key + " -> " + remedy);
  }

  @Test
  void every_unknown_source_is_told_at_its_place() throws Exception {
    assertThat(
            rules.with(
                SIGN_RULE,
                "COMMON-PRACTICE",
                "COMMON-PRACTISE; US-ARMY-TM-5-4210-220-12#4-30; MAKER"))
        .containsExactly(
            "11:12 [unknown-source] \"COMMON-PRACTISE\" is not in the table of sources"
                + " -> write \"COMMON-PRACTICE\"",
            "11:60 [unknown-source] \"MAKER\" is not in the table of sources"
                + " -> write one of \"COMMON-PRACTICE\", \"US-ARMY-TM-5-4210-220-12\"");
  }

  @Test
  void every_attribute_is_told_once() throws Exception {
    assertThat(rules.with(SIGN_RULE, "when\n", "  no-loop true\n  agenda-group \"x\"\nwhen\n"))
        .hasSize(2)
        .allMatch(problem -> problem.contains("[rule-attribute]"));
  }
}
