package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.HEADER;
import static org.brakerules.linter.SmallRuleBase.LIMITS;
import static org.brakerules.linter.SmallRuleBase.POINTS;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is asked for and read by nobody, and what is read and asked for by nobody. */
class UnreadTest {

  private static final String UNREAD_END_PLAY =
      "2:1 [unread-point] no rule and no limit reads \"camshaft.end-play\", so it is looked at for"
          + " nothing -> write a rule that reads it, take the point out, or put it into unread.csv"
          + " with the reason";

  private static final String NO_LIMITS = LIMITS.lines().findFirst().orElseThrow() + "\n";
  private static final String NO_POINTS = POINTS.lines().findFirst().orElseThrow() + "\n";

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws IOException {
    rules = new SmallRuleBase(folder);
  }

  @Test
  void a_point_that_nobody_reads_is_told() throws IOException {
    rules.write("camshaft/camshaft.limits.csv", NO_LIMITS);
    assertThat(rules.problems()).containsExactly(UNREAD_END_PLAY);
  }

  @Test
  void a_point_that_a_verdict_asks_for_is_read() throws IOException {
    rules.write("camshaft/camshaft.limits.csv", NO_LIMITS);
    String asking = "verdict.measureAgain( $part, \"camshaft.end-play\" )";
    assertThat(rules.with(SIGN_RULE, "verdict.replace( $part )", asking)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"part.crack=seen,camshaft.crack", "layout.camshaft=tube,rest-layout.layout.camshaft"})
  void a_point_that_a_row_chooses_parts_by_is_read(String choice, String point) throws IOException {
    rules.write(
        "rest/rest.drl",
        rest()
            .replace("crack == Sign.SEEN || ", "")
            .replace("camshaft != CamshaftLayout.UNKNOWN, ", ""));
    assertThat(rules.problems()).anyMatch(problem -> problem.contains(point));
    rules.write(
        "camshaft/camshaft.limits.csv",
        LIMITS.replace("dial-indicator,,", "dial-indicator,," + choice));
    assertThat(rules.problems()).noneMatch(problem -> problem.contains(point));
  }

  @Test
  void a_broken_rule_may_read_what_nobody_else_does() throws IOException {
    rules.write("camshaft/camshaft.limits.csv", NO_LIMITS);
    rules.write("camshaft/camshaft.drl", HEADER + SIGN_RULE.replace("crack", "crak"));
    assertThat(rules.problems()).doesNotContain(UNREAD_END_PLAY);
  }

  @Test
  void a_kind_of_part_that_no_rule_looks_at_is_told() throws IOException {
    rules.write(
        "rest/rest.drl",
        rest().replaceAll("(?s)rule \"REST-\\d+ Anything about the tone ring.*?end\n", ""));
    Files.delete(folder.resolve("org/brakerules/rules/rest-tone-ring/rest-tone-ring.points.csv"));
    assertThat(rules.problems())
        .containsExactly(
            "1:1 [unread-part] no rule looks at the tone ring, so it is never found bad"
                + " -> write a rule of ToneRing, or put \"tone-ring\" into unread.csv with the"
                + " reason");
  }

  @Test
  void a_sign_that_no_rule_looks_at_is_told() throws IOException {
    rules.write("rest/rest.drl", rest().replace("toothMissing == Sign.SEEN", "bent == Sign.SEEN"));
    rules.write(
        "rest-tone-ring/rest-tone-ring.points.csv",
        Files.readString(
                folder.resolve("org/brakerules/rules/rest-tone-ring/rest-tone-ring.points.csv"))
            .replaceAll("rest-tone-ring.tooth-missing.*\n", ""));
    assertThat(rules.problems())
        .containsExactly(
            "1:1 [unread-sign] no rule looks at toothMissing of the tone ring, so a part that shows"
                + " it passes -> write a rule that reads it and the point"
                + " \"tone-ring.tooth-missing\", or put that into unread.csv with the reason");
  }

  @Test
  void what_is_excepted_with_a_reason_may_stay_unread() throws IOException {
    rules.write("camshaft/camshaft.limits.csv", NO_LIMITS);
    rules.write("unread.csv", "id,reason\ncamshaft.end-play,compared before the rules run\n");
    assertThat(rules.problems()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          camshaft.end-play,once read by hand ~ 2:1 [needless-exception] "camshaft.end-play" is read, so it needs no exception -> take the row out
          camshaft.end-paly,once read by hand ~ 2:1 [needless-exception] "camshaft.end-paly" is no inspection point, kind of part or sign -> take the row out
          tone-ring,has its own shop ~ 2:1 [needless-exception] "tone-ring" is read, so it needs no exception -> take the row out
          """)
  void an_exception_that_excepts_nothing_is_told(String row, String problem) throws IOException {
    rules.write("unread.csv", "id,reason\n" + row + "\n");
    assertThat(rules.problems()).containsExactly(problem);
  }

  @Test
  void an_exception_is_there_once_and_has_a_reason() throws IOException {
    rules.write("camshaft/camshaft.limits.csv", NO_LIMITS);
    rules.write("unread.csv", "id,reason\ncamshaft.end-play,for later\ncamshaft.end-play,\n");
    assertThat(rules.problems())
        .containsExactly(
            "3:1 [needless-exception] \"camshaft.end-play\" is there twice -> take one row out",
            "3:19 [missing-cell] reason is empty, so the row cannot be used"
                + " -> state it; in this column an empty cell means nothing");
  }

  @Test
  void a_rule_that_reads_what_no_point_asks_for_is_told() throws IOException {
    String points = POINTS.replaceAll("camshaft.crack.*\n", "");
    rules.write("camshaft/camshaft.points.csv", points);
    rules.write("rest/rest.drl", rest().replace("crack == Sign.SEEN || ", ""));
    assertThat(rules.problemsOf(SIGN_RULE))
        .containsExactly(
            "15:21 [unasked-property] no inspection point asks for crack of the camshaft, so nobody"
                + " states it and the rule stays silent -> add the point \"camshaft.crack\" to"
                + " camshaft.points.csv");
  }

  @Test
  void a_rule_that_reads_a_layout_that_no_point_asks_for_is_told() throws IOException {
    rules.write("rest-layout/rest-layout.points.csv", NO_POINTS);
    rules.write(
        "rest/rest.drl",
        rest().replaceAll("(?s)rule \"REST-\\d+ Anything about the brake.*?end\n", ""));
    assertThat(
            rules.with(
                SIGN_RULE,
                "$part : Camshaft( crack == Sign.SEEN )",
                "Brake( camshaft == CamshaftLayout.TUBE, $wheelEnd : wheelEnd )\\n"
                    + "  $part : Camshaft( wheelEnd == $wheelEnd, crack == Sign.SEEN )"))
        .containsExactly(
            "15:10 [unasked-property] no inspection point asks for layout.camshaft, so nobody"
                + " states it and the rule stays silent -> add the point to the table of a part"
                + " that hangs on it");
  }

  private String rest() throws IOException {
    return Files.readString(folder.resolve("org/brakerules/rules/rest/rest.drl"));
  }
}
