package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.HEADER;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command the build runs. */
class LintCommandTest {

  @TempDir Path folder;
  private SmallRuleBase rules;
  private final ByteArrayOutputStream printed = new ByteArrayOutputStream();

  @BeforeEach
  void aSmallRuleBase() throws Exception {
    rules = new SmallRuleBase(folder);
  }

  @Test
  void a_sound_rule_base_is_counted() throws Exception {
    rules.write("camshaft/camshaft.drl", HEADER + SIGN_RULE + LIMIT_RULE);
    assertThat(run(folder.toString())).isZero();
    assertThat(output()).isEqualTo("40 rules in 2 files read, no problems.\n");
  }

  @Test
  void problems_are_printed_one_a_line_in_the_order_of_the_files() throws Exception {
    rules.write("cautions.csv", "id,from,text,source\nchock,wheel-on,Chock.,MAKERS\n");
    rules.write(
        "camshaft/camshaft.drl",
        HEADER + SIGN_RULE.replace("crack ==", "crak ==").replace("replace(", "replce("));
    assertThat(run(folder.toString())).isEqualTo(1);
    assertThat(output())
        .isEqualTo(
            """
            org/brakerules/rules/camshaft/camshaft.drl:15:21: [unknown-property] CAMSHAFT-010: Camshaft has no property "crak" -> write "crack"
            org/brakerules/rules/camshaft/camshaft.drl:17:11: [unknown-verdict] CAMSHAFT-010: there is no verdict "replce" -> write "replace"
            org/brakerules/rules/cautions.csv:2:23: [unknown-source] "MAKERS" is not in the table of sources -> write one of "COMMON-PRACTICE", "US-ARMY-TM-5-4210-220-12"
            39 rules in 2 files read, 3 problems.
            """);
  }

  @Test
  void a_folder_that_is_not_there_is_told() {
    String folder = this.folder.resolve("elsewhere").toString();
    assertThat(run(folder)).isEqualTo(2);
    assertThat(output())
        .isEqualTo(
            folder
                + ": the rule base cannot be read: there is no such folder; name the folder that"
                + " holds org/brakerules/rules, such as src/main/resources\n");
  }

  @Test
  void a_folder_without_rule_base_is_told(@TempDir Path empty) {
    assertThat(run(empty.toString())).isEqualTo(2);
    assertThat(output())
        .isEqualTo(
            empty
                + ": the rule base cannot be read: it holds no org/brakerules/rules; name the"
                + " folder that holds org/brakerules/rules, such as src/main/resources\n");
  }

  @Test
  void a_file_in_another_encoding_is_told() throws Exception {
    rules.write("camshaft/camshaft.drl", "");
    Files.write(
        folder.resolve("org/brakerules/rules/camshaft/camshaft.drl"),
        "é".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(run(folder.toString())).isEqualTo(2);
    assertThat(output())
        .isEqualTo(
            folder
                + ": the rule base cannot be read: org/brakerules/rules/camshaft/camshaft.drl is no"
                + " UTF-8 text; save it as UTF-8\n");
  }

  @Test
  void the_folder_must_be_named() {
    assertThat(run()).isEqualTo(2);
    assertThat(output())
        .isEqualTo(
            "Name the folder that holds org/brakerules/rules, such as src/main/resources.\n");
  }

  private int run(String... arguments) {
    return LintCommand.run(new PrintStream(printed, true, StandardCharsets.UTF_8), arguments);
  }

  private String output() {
    return printed.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
  }
}
