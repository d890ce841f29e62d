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

/** The file around the rules. */
class RuleFileTest {

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws Exception {
    rules = new SmallRuleBase(folder);
  }

  @Test
  void a_sound_file_has_no_problems() throws Exception {
    assertThat(rules.problemsOf(SIGN_RULE + "\n// Limits\n" + LIMIT_RULE)).isEmpty();
  }

  @Test
  void line_ends_of_another_system_change_no_place() throws Exception {
    assertThat(rules.with(SIGN_RULE.replace("\n", "\r\n"), "Sign.SEEN", "Sign.SEN"))
        .containsExactly("15:35 [unknown-constant] Sign has no \"SEN\" -> write \"SEEN\"");
  }

  @Test
  void the_first_line_that_differs_from_the_header_is_told() throws Exception {
    String header = HEADER.replace("import org.brakerules.model.part.*;\n", "");
    assertThat(rules.problemsOfFile(header + SIGN_RULE))
        .containsExactly(
            "5:1 [header] line 5 of the header is \"import org.brakerules.model.reading.*;\""
                + " -> write \"import org.brakerules.model.part.*;\";"
                + " the header is the same in every rule file");
  }

  @Test
  void an_empty_file_lacks_its_header() throws Exception {
    assertThat(rules.problemsOfFile(""))
        .containsExactly(
            "1:1 [header] line 1 of the header is empty -> write \"package"
                + " org.brakerules.rules;\"; the header is the same in every rule file");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          function void stop( ) { System.exit( 1 ); } ~ function ~ take it out; what needs Java is calculated before the rules run
          import java.util.*; ~ import ~ take it out; what needs Java is calculated before the rules run
          dialect "mvel" ~ dialect ~ take it out; what needs Java is calculated before the rules run
          global java.util.List list; ~ global ~ take it out; rules speak through verdict, the only global
          query "drums" Drum( ) end ~ query ~ take it out; rules speak of parts, Brake, BeyondLimit, Replaced, Disturbed, UnlikePartner and ReadingsContradict only
          declare Bolt size : int end ~ declare ~ take it out; rules speak of parts, Brake, BeyondLimit, Replaced, Disturbed, UnlikePartner and ReadingsContradict only
          bolts ~ bolts ~ take it out, or begin a rule on a line of its own: rule "COMPONENT-010 Title"
          """)
  void anything_beside_rules_is_told(String line, String word, String remedy) throws Exception {
    String problem =
        " [outside-rules] \"" + word + "\" stands where only a rule may stand -> " + remedy;
    assertThat(rules.problemsOf(line + "\n" + SIGN_RULE)).containsExactly("10:1" + problem);
    assertThat(rules.problemsOf(SIGN_RULE + line + "\n")).containsExactly("19:1" + problem);
  }

  @Test
  void a_word_behind_the_end_of_a_rule_is_told() throws Exception {
    assertThat(rules.problemsOf(SIGN_RULE.replace("end\n", "end bolts\n")))
        .containsExactly(
            "18:5 [outside-rules] \"bolts\" stands where only a rule may stand -> take it out, or"
                + " begin a rule on a line of its own: rule \"COMPONENT-010 Title\"");
  }

  @Test
  void a_rule_in_a_comment_is_told() throws Exception {
    String problem =
        "10:1 [comment] a rule is commented out -> take it out; its id is not used again";
    assertThat(rules.problemsOf("/*\n" + SIGN_RULE + "*/\n" + LIMIT_RULE)).containsExactly(problem);
    assertThat(rules.problemsOf(SIGN_RULE.replaceAll("(?m)^(.)", "// $1") + LIMIT_RULE))
        .containsExactly(problem);
  }

  @ParameterizedTest
  @CsvSource({"camshaft/more.drl", "more.DRL", "camshaft/table.drl.xls", "camshaft/words.dsl"})
  void rules_in_another_file_are_told(String file) throws Exception {
    rules.write(file, "");
    assertThat(rules.problemsOf(SIGN_RULE))
        .containsExactly(
            "1:1 [stray-file] rules may not stand here, yet they would be compiled"
                + " -> move them to org/brakerules/rules/<component>/<component>.drl");
  }

  @ParameterizedTest
  @CsvSource({
    "camshaft/camshaft.case.yaml, camshaft.cases.yaml",
    "camshaft/cmashaft.limits.csv, camshaft.limits.csv"
  })
  void a_file_whose_name_nobody_reads_is_told(String file, String meant) throws Exception {
    rules.write(file, "");
    assertThat(rules.problemsOf(SIGN_RULE))
        .containsExactly(
            "1:1 [stray-file] nobody reads a file of this name here -> name it after its folder,"
                + " such as "
                + meant
                + ", or take it out");
  }
}
