package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.LIMITS;
import static org.brakerules.linter.SmallRuleBase.POINTS;
import static org.brakerules.linter.SmallRuleBase.QUEBEC;
import static org.brakerules.linter.SmallRuleBase.SOURCES;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells of the tables that say nothing the rule base could use. */
class TableCellsTest {

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws IOException {
    rules = new SmallRuleBase(folder);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          max,camshaft, ~ max,camshft, ~ 2:23 [unknown-word] "camshft" is no kind of part, so the table cannot be used -> write "camshaft"
          at most ~ no more than ~ 2:40 [unknown-word] "no more than" is no comparison, so the table cannot be used -> write one of "at least", "at most", "less than", "more than"
          at most ~ below ~ 2:40 [unknown-word] "below" is no comparison, so the table cannot be used -> write one of "at least", "at most", "less than", "more than"
          spline-end ~ spline ~ 2:57 [unknown-word] "spline" is no station, so the table cannot be used -> write one of "adjuster", "anchor-end", "cam-end", "clevis-hole", "closed-side", "head-end", "inner", "large", "lower", "middle", "open-side", "outer", "shoe-centre", "small", "spline-end", "spline-pitch-radius", "thinnest-point", "tube", "upper", "whole-part"
          dial-indicator ~ dial-indicator;feeler-gage ~ 2:83 [unknown-word] "feeler-gage" is no way of measuring, so the table cannot be used -> write "feeler-gauge"
          dial-indicator,, ~ dial-indicator,afterwork2, ~ 2:83 [unknown-word] "afterwork2" is no moment of a reading, so the table cannot be used -> write "after-work"
          dial-indicator,,, ~ dial-indicator,,,qebec ~ 2:85 [unknown-word] "qebec" is no rule set of rule-sets.csv, so the table cannot be used -> write "quebec"
          at most ~ (nothing) ~ 2:40 [missing-cell] comparison is empty, so the row cannot be used -> state it; in this column an empty cell means nothing
          endPlay ~ endplays ~ 2:32 [table-property] the camshaft has no property "endplays" to ask for -> write "endPlay"
          endPlay ~ crack ~ 2:32 [table-property] crack of the camshaft is not measured, so nothing can be held against the limit -> write one of "endPlay", "journalDiameter", "rotation", "splineBacklash"
          0.030 in ~ 0.030 ~ 2:48 [table-value] "0.030" is no value: the unit is missing -> write a number with the unit in or mm, such as 0.030 in
          0.030 in ~ thin ~ 2:48 [table-value] "thin" is no value: the number is missing -> write a number with the unit in or mm, such as 0.030 in
          0.030 in ~ 30 deg ~ 2:48 [table-value] 30 deg is an angle, and endPlay is measured as a length, so no reading can be held against it -> write a length, such as 30 in
          0.030 in ~ 80 % of ratedStroke ~ 2:48 [table-value] "80 % of ratedStroke" is a share of nothing that is known -> write a share of the rated stroke as the limit of a length, such as 80 % of layout.chamber.ratedStroke
          dial-indicator,,,,, ~ dial-indicator,,,,14.10.2021, ~ 2:86 [table-date] "14.10.2021" is no day of the calendar, so the table cannot be used -> write year, month and day, such as 2026-11-20
          dial-indicator,,,,, ~ dial-indicator,,,,2021-02-29, ~ 2:86 [table-date] "2021-02-29" is no day of the calendar, so the table cannot be used -> write year, month and day, such as 2026-11-20
          dial-indicator,,,,, ~ dial-indicator,,,,2021-10-14,2021-10-13 ~ 2:97 [table-date] the limit begins on 2021-10-14 and ends before, on 2021-10-13, so it never holds -> write a last day from 2021-10-14 on, or leave it empty
          dial-indicator,,, ~ dial-indicator,,layout.camshft=tube, ~ 2:84 [selector] parts cannot be chosen by "layout.camshft" -> write "layout.camshaft"
          dial-indicator,,, ~ dial-indicator,,colour=red, ~ 2:84 [selector] parts cannot be chosen by "colour" -> write axle.kind, or layout. or part. with a property of the layout or the camshaft
          dial-indicator,,, ~ dial-indicator,,axle.kind=steer; layout.camshaft=tub, ~ 2:101 [selector] layout.camshaft is never "tub", so no part would fit -> write "tube"
          dial-indicator,,, ~ dial-indicator,,layout.drumDiameter=16.5, ~ 2:84 [selector] layout.drumDiameter is never "16.5", so no part would fit -> write a value with its unit, such as 16.5 in
          dial-indicator,,, ~ dial-indicator,,layout.camshaft, ~ 2:84 [selector] "layout.camshaft" does not say which parts the row is for -> write attribute=value, such as layout.camshaft=tube|split
          dial-indicator,,, ~ dial-indicator,,layout.camshaft=tube|unknown, ~ 2:84 [selector] layout.camshaft=unknown chooses nothing: what is not stated fits until it is -> take "unknown" out
          """)
  void a_cell_of_a_limit_is_told(String written, String instead, String problem)
      throws IOException {
    rules.write("camshaft/camshaft.limits.csv", changed(LIMITS, written, instead));
    assertThat(rules.problems()).containsExactly(problem);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          camshaft,crack ~ camshaft,crak ~ 3:25 [table-property] the camshaft has no property "crak" to ask for -> write "crack"
          spline-end,shoes-off ~ splin-end,shoes-off ~ 2:36 [unknown-word] "splin-end" is no station, so the table cannot be used -> write "spline-end"
          shoes-off,,always,at-rest,fault ~ shoe-off,,always,at-rest,fault ~ 3:32 [unknown-word] "shoe-off" is no scope, so the table cannot be used -> write "shoes-off"
          shoes-off,,always,at-rest,fault ~ shoes-off,,allways,at-rest,fault ~ 3:43 [unknown-word] "allways" is no answer to when it is needed, so the table cannot be used -> write "always"
          always,at-rest,fault ~ always,rest,fault ~ 3:50 [unknown-word] "rest" is no state of the brake, so the table cannot be used -> write one of "applied", "at-rest"
          fault ~ falt ~ 3:58 [unknown-word] "falt" is no answer to what it finds, so the table cannot be used -> write "fact"
          fault ~ fact ~ 3:58 [wrong-finds] crack is a sign, and a sign that is seen says something of the part -> write "fault", or "good" for a sign that speaks for the part
          fact ~ fault ~ 2:73 [wrong-finds] endPlay is no sign, so it is neither a fault nor good -> write "fact"
          Look along the shaft. ~ (nothing) ~ 3:68 [missing-cell] how is empty, so the row cannot be used -> state it; in this column an empty cell means nothing
          camshaft-out, ~ camshaft-out,part.condition=old ~ 4:58 [selector] part.condition is never "old", so no part would fit -> write one of "as-found", "new"
          """)
  void a_cell_of_a_point_is_told(String written, String instead, String problem)
      throws IOException {
    rules.write("camshaft/camshaft.points.csv", changed(POINTS, written, instead));
    assertThat(rules.problems()).contains(problem);
  }

  @Test
  void a_caution_is_due_from_a_scope_on() throws IOException {
    rules.write("cautions.csv", "id,from,text,source\nchock,wheels-on,Chock.,COMMON-PRACTICE\n");
    assertThat(rules.problems())
        .containsExactly(
            "2:7 [unknown-word] \"wheels-on\" is no scope, so the table cannot be used"
                + " -> write \"wheel-on\"");
  }

  @Test
  void a_source_has_a_standing_that_is_known() throws IOException {
    rules.write("sources.csv", SOURCES.replace("government", "goverment"));
    assertThat(rules.problems())
        .containsExactly(
            "3:43 [unknown-word] \"goverment\" is no standing of a source, so the table cannot be"
                + " used -> write \"government\"");
  }

  @Test
  void a_rule_set_asks_for_adjusters_from_a_day_on() throws IOException {
    rules.write("rule-sets/quebec/rule-set.csv", QUEBEC.replace("1996-05-31", "May 1996"));
    assertThat(rules.problems())
        .containsExactly(
            "2:39 [table-date] \"May 1996\" is no day of the calendar, so the table cannot be used"
                + " -> write year, month and day, such as 2026-11-20");
  }

  private static String changed(String table, String written, String instead) {
    assertThat(table).contains(written);
    return table.replace(written, instead.equals("(nothing)") ? "" : instead);
  }
}
