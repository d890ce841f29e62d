package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.HEADER;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files of cases: every slip is told in its line, with the name of the case. */
class CasesTest {

  private static final String CASES =
      """
      - case: Crack
        fires: [CAMSHAFT-010]
        change:
          camshaft: { crack: seen }
          drum:
            soaked: seen
        then:
          camshaft: replace
        also: { replace: [drum] }
        needs: [camshaft.crack]
        road: { camshaft: silent }
      - case: Play
        near: CAMSHAFT-020
      """;

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws IOException {
    rules = new SmallRuleBase(folder);
    rules.write("camshaft/camshaft.drl", HEADER + SIGN_RULE + LIMIT_RULE);
    rules.writeSoundWheelEnd();
  }

  @Test
  void sound_cases_have_no_problem() throws IOException {
    rules.write("camshaft/camshaft.cases.yaml", CASES);
    assertThat(rules.problems()).isEmpty();
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          fires: ~ fire: ~ 2:3 [case-key] case "Crack": "fire" is no key of a case -> write "fires"
          [CAMSHAFT-010] ~ [CAMSHAFT-01] ~ 2:11 [case-rule] case "Crack": there is no rule "CAMSHAFT-01" -> write "CAMSHAFT-010"
          near: CAMSHAFT-020 ~ speaks: { CAMSHAFT-02: [camshaft] } ~ 13:13 [case-rule] case "Play": there is no rule "CAMSHAFT-02" -> write "CAMSHAFT-020"
          camshaft: { crack ~ camshft: { crack ~ 4:5 [case-part] case "Crack": "camshft" is no part of a wheel end -> write "camshaft"
          camshaft: { crack ~ right/camshaft: { crack ~ 4:5 [case-part] case "Crack": "right/camshaft" is no part of a wheel end -> write it without the wheel end; the one across the axle is changed under partner
          [drum] ~ [lining] ~ 9:21 [case-part] case "Crack": "lining" is no part of a wheel end -> write one of "lining/lower", "lining/upper"
          [drum] ~ [right/lining/uper] ~ 9:21 [case-part] case "Crack": "right/lining/uper" is no part of a wheel end -> write "right/lining/upper"
          [drum] ~ [camshaft] ~ 9:21 [case-answer] case "Crack": "camshaft" is named twice under then and also -> name each part once
          camshaft: replace ~ camshaft: replase ~ 8:15 [case-answer] case "Crack": "replase" is no disposition -> write "replace"
          also: { replace ~ also: { renew ~ 9:11 [case-answer] case "Crack": "renew" is no disposition -> write one of "adjust", "clean", "replace", "reuse", "undecided"
          camshaft: silent ~ camshaft: mett ~ 11:21 [case-answer] case "Crack": "mett" is no road answer -> write "met"
          camshaft.crack ~ camshaft.crak ~ 10:11 [unknown-point] case "Crack": there is no inspection point "camshaft.crak" -> write "camshaft.crack"
          crack: seen ~ crak: seen ~ 4:23 [case-job] case "Crack": change > camshaft > crak: found an unknown field -> write "crack", the nearest known field
          soaked: seen ~ soaked: sen ~ 6:15 [case-job] case "Crack": change > drum > soaked: found "sen" -> write "seen", the nearest known name
          near: CAMSHAFT-020 ~ near: CAMSHAFT-020\\n  layout: { camshaft: tubes } ~ 14:23 [case-job] case "Play": layout > camshaft: found "tubes" -> write "tube", the nearest known name
          near: CAMSHAFT-020 ~ near: CAMSHAFT-020\\n  layout: { springBrake: yes } ~ 14:26 [case-job] case "Play": layout > springBrake: found true -> write "yes", "no" or "unknown", with the quotes: a bare yes or no is no text
          near: CAMSHAFT-020 ~ near: CAMSHAFT-020\\n  layout: { chamber: { type: 30 } } ~ 14:30 [case-job] case "Play": layout > chamber > type: found 30 -> write "30", with the quotes: a bare number is no text
          near: CAMSHAFT-020 ~ near: CAMSHAFT-020\\n  job: { ruleSet: quebek } ~ 14:19 [case-job] case "Play": there is no rule set "quebek" -> write "quebec"
          near: CAMSHAFT-020 ~ near: CAMSHAFT-020\\n  remove: [shim/head-end] ~ 14:11 [case-job] case "Play": the sound wheel end has no shim/head-end -> take it out of the list
          near: CAMSHAFT-020 ~ near: CAMSHAFT-020\\n  axle: { wheelEnds: [] } ~ 14:11 [case-job] case "Play": the job has no left wheel end of axle 2 any more, with its layout and parts -> leave that one as it is, and change it under layout and change
          near: CAMSHAFT-020 ~ source: a book ~ 12:3 [case-expects-nothing] case "Play": it expects nothing, so it shows nothing -> name the rule under fires or near, and what becomes of the part under then
          case: Play ~ case: Crack ~ 12:3 [case-name] case "Crack": the case in line 1 has the same name -> say in the name what tells the two apart
          - case: Play\\n ~ -\\n ~ 13:3 [case-name] a case without a name -> begin it with "- case:" and what it shows, and on which side of the limit
          near: CAMSHAFT-020 ~ near: CAMSHAFT-020\\n  then: ~ 14:3 [case-form] case "Play": "then" has nothing behind it -> write it as in then: { camshaft: replace }, or take the key out
          near: CAMSHAFT-020 ~ near: CAMSHAFT-020\\n  then: [camshaft] ~ 14:3 [case-form] case "Play": "then" is not written in the form that is read -> write it as in then: { camshaft: replace }
          near: CAMSHAFT-020 ~ near: CAMSHAFT-020\\n  near: CAMSHAFT-010 ~ 14:3 [case-form] "near" is there twice, and the first one is lost -> write it once, with both beneath it
          near: CAMSHAFT-020 ~ near: *other ~ 13:9 [case-form] the star points elsewhere, which nobody follows -> write out what is meant, or put a text that begins with a star in quotes
          """)
  void a_slip_is_told_where_it_stands(String written, String instead, String problem)
      throws IOException {
    String piece = written.replace("\\n", "\n");
    assertThat(CASES).contains(piece);
    rules.write("camshaft/camshaft.cases.yaml", CASES.replace(piece, instead.replace("\\n", "\n")));
    assertThat(rules.problems()).contains(problem);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          \\tnear: CAMSHAFT-010 ~ 14:1 [case-form] a tab, where only blanks may indent a line -> write two blanks instead of it
          \\s fails: end play: none ~ 14:18 [case-form] a second colon in one line, or a line that is indented too far -> put a text that holds a colon in quotes; indent the line like its neighbours
          \\s source: "a book ~ 14:1 [case-form] a quote that is opened and not closed -> close it where the text ends
          \\s holds: [camshaft ~ 14:1 [case-form] a list that is opened with [ and not closed before this place -> write commas between its entries and close it with ]
          \\s then: { camshaft: reuse ~ 14:1 [case-form] a brace that is opened with { and not closed before this place -> write commas between its entries and close it with }
          \\s source: @book ~ 14:11 [case-form] a text that begins with a character that means something else here -> put the text in quotes
          near: CAMSHAFT-010 ~ 14:1 [case-form] a line that is indented unlike its neighbours -> begin "- case:" at the margin, and indent its other keys by two blanks
          """)
  void what_is_no_yaml_is_told_in_plain_words(String line, String problem) throws IOException {
    String last = line.replace("\\t", "\t").replace("\\s", " ");
    rules.write("camshaft/camshaft.cases.yaml", CASES + last + "\n");
    assertThat(rules.problems()).containsExactly(problem);
  }

  @ParameterizedTest
  @CsvSource({"''", "'# nothing yet'", "'---'", "'[]'"})
  void a_file_without_a_case_is_told(String text) throws IOException {
    rules.write("camshaft/camshaft.cases.yaml", text);
    assertThat(rules.problems())
        .containsExactly(
            "1:1 [case-form] the file holds no case -> begin each case with \"- case:\" and what it"
                + " shows, its other keys on the lines below");
  }

  @Test
  void a_file_that_is_no_list_is_told() throws IOException {
    rules.write("camshaft/camshaft.cases.yaml", "case: Crack\n");
    assertThat(rules.problems())
        .containsExactly(
            "1:1 [case-form] the file is no list of cases -> begin each case with \"- case:\" and"
                + " what it shows, its other keys on the lines below");
  }

  @Test
  void cases_above_a_slip_are_read_all_the_same() throws IOException {
    rules.write(
        "camshaft/camshaft.cases.yaml", CASES.replace("fires", "fire") + "\tnear: CAMSHAFT-010\n");
    assertThat(rules.problems())
        .extracting(problem -> problem.replaceFirst("\\].*", "]"))
        .containsExactly("2:3 [case-key]", "14:1 [case-form]");
  }

  @Test
  void cases_start_from_a_sound_wheel_end() throws IOException {
    rules.write("camshaft/camshaft.cases.yaml", CASES);
    Files.delete(folder.resolve("org/brakerules/rules/sound-wheel-end.json"));
    assertThat(rules.problems())
        .containsExactly(
            "1:1 [case-job] there is no such file, and every case starts from it -> add the job of"
                + " one wheel end, the left one of axle 2, with every point looked at");
  }

  @Test
  void a_sound_wheel_end_that_is_no_job_is_told_once() throws IOException {
    rules.write("camshaft/camshaft.cases.yaml", CASES);
    rules.writeSoundWheelEnd("\"camshaft-out\"", "\"camshaft-outt\"");
    assertThat(rules.problems())
        .containsExactly(
            "5:12 [case-job] scope: found \"camshaft-outt\" -> write \"camshaft-out\", the nearest"
                + " known name");
  }

  @Test
  void a_sound_wheel_end_under_a_rule_set_that_is_not_there_is_told_once() throws IOException {
    rules.write("camshaft/camshaft.cases.yaml", CASES);
    rules.writeSoundWheelEnd("us-federal", "us-federall");
    assertThat(rules.problems())
        .containsExactly(
            "4:14 [case-job] there is no rule set \"us-federall\" -> write \"us-federal\"");
  }
}
