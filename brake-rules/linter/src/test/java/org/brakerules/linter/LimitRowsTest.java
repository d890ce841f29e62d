package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.LIMITS;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of one limit that hold together, and rows that hold for nothing. */
class LimitRowsTest {

  private static final String HEADER = LIMITS.lines().findFirst().orElseThrow() + "\n";

  /** Part, property, station, applies-to, rule-set, from and to are filled in. */
  private static final String ROW =
      "%s.end-play.max,%s,%s,at most,0.030 in,%s,dial-indicator,,%s,%s,%s,%s,COMMON-PRACTICE,\n";

  private static final String SNAP_RING_POINTS =
      SmallRuleBase.POINTS.lines().findFirst().orElseThrow()
          + "\nsnap-ring.gap,snap-ring,gap,,wheel-on,,always,at-rest,fact,feeler gauge,Look.\n";

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws IOException {
    rules = new SmallRuleBase(folder);
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          ,,, ~ layout.camshaft=tube,,, ~ write layout.camshaft=not tube into applies-to of line 2
          layout.camshaft=tube,,, ~ ,,, ~ write layout.camshaft=not tube into applies-to of this row
          layout.camshaft=tube|split,,, ~ layout.camshaft=split|closed,,, ~ let applies-to or rule-set of the two rows name nothing in common
          layout.camshaft=not tube,,, ~ layout.camshaft=split,,, ~ let applies-to or rule-set of the two rows name nothing in common
          layout.camshaft=tube,,, ~ axle.kind=steer,,, ~ write layout.camshaft=not tube into applies-to of this row
          layout.drumDiameter=16.5 in,,, ~ layout.drumDiameter=16 1/2 in,,, ~ end one of them with to, and begin the other the day after with from
          layout.chamber.type=30,,, ~ layout.chamber.type=not 24,,, ~ let applies-to or rule-set of the two rows name nothing in common
          ,,, ~ ,,2021-10-14, ~ write 2021-10-13 into to of line 2
          ,,2021-10-14, ~ ,,,2021-10-14 ~ write 2021-10-13 into to of line 3
          ,quebec,, ~ ,quebec,2021-10-14, ~ write 2021-10-13 into to of line 2
          ,,2021-10-14,2022-12-31 ~ ,,2021-10-14, ~ end one of them with to, and begin the other the day after with from
          ,quebec,, ~ ,,, ~ let applies-to or rule-set of the two rows name nothing in common
          otherwise,,, ~ otherwise,quebec,, ~ let applies-to or rule-set of the two rows name nothing in common
          """)
  void rows_that_one_part_can_be_in_on_one_day_are_told(String first, String second, String remedy)
      throws IOException {
    assertThat(problems(first, second))
        .containsExactly(
            "3:1 [limit-overlap] one part can be in this row and in line 2 on the same day, and has"
                + " two values of \"camshaft.end-play.max\" -> "
                + remedy);
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          layout.camshaft=tube,,, ~ layout.camshaft=split,,,
          layout.camshaft=tube,,, ~ layout.camshaft=not tube,,,
          layout.chamber.ratedStroke=3 in,,, ~ layout.chamber.ratedStroke=not 3 in|76 mm,,,
          layout.camshaft=tube,,, ~ otherwise,,,
          ,us-federal,, ~ ,quebec,,
          ,,,2021-10-13 ~ ,,2021-10-14,
          """)
  void rows_that_no_part_is_in_together_are_sound(String first, String second) throws IOException {
    assertThat(problems(first, second)).isEmpty();
  }

  @Test
  void days_between_two_rows_are_told() throws IOException {
    assertThat(problems(",,,2021-10-13", ",,2021-10-15,"))
        .containsExactly(
            "3:86 [limit-gap] between the last day of line 2, 2021-10-13, and this first day no"
                + " value holds, and parts stay undecided -> write 2021-10-14");
  }

  @Test
  void rows_in_any_order_follow_one_another_by_their_days() throws IOException {
    String row = row("camshaft", "endPlay", "spline-end", ",,2022-01-01,");
    rules.write(
        "camshaft/camshaft.limits.csv",
        HEADER
            + row
            + row("camshaft", "endPlay", "spline-end", ",,,2020-12-31")
            + row("camshaft", "endPlay", "spline-end", ",,2021-01-01,2021-12-31"));
    assertThat(rules.problems()).isEmpty();
  }

  @ParameterizedTest(name = "{0} at {2} for {3}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          camshaft ~ endPlay ~ spline-end ~ layout.camshaft=tube; layout.camshaft=split ~ 2:84 [limit-fits-nothing] no camshaft has layout.camshaft=tube and layout.camshaft=split, so the limit is never checked -> demand layout.camshaft once, with | between its values
          camshaft ~ endPlay ~ spline-end ~ part.station=upper ~ 2:84 [limit-fits-nothing] no camshaft has part.station=upper, so the limit is never checked -> write "part.station=whole-part"
          snap-ring ~ gap ~ upper ~ '' ~ 2:55 [limit-fits-nothing] no snap ring of this row is at upper, so the limit is never checked -> write one of "head-end", "spline-end", or leave it empty for the part's own station
          snap-ring ~ gap ~ head-end ~ part.station=spline-end ~ 2:55 [limit-fits-nothing] no snap ring of this row is at head-end, so the limit is never checked -> write "spline-end", or leave it empty for the part's own station
          """)
  void a_row_that_no_part_fits_is_told(
      String part, String property, String station, String appliesTo, String problem)
      throws IOException {
    rules.write("snap-ring/snap-ring.points.csv", SNAP_RING_POINTS);
    rules.write("snap-ring/snap-ring.limits.csv", HEADER + row("snap-ring", "gap", "", ",,,"));
    rules.write(
        "%s/%s.limits.csv".formatted(part, part),
        HEADER + row(part, property, station, appliesTo + ",,,"));
    assertThat(rules.problems()).containsExactly(problem);
  }

  private List<String> problems(String first, String second) throws IOException {
    rules.write(
        "camshaft/camshaft.limits.csv",
        HEADER
            + row("camshaft", "endPlay", "spline-end", first)
            + row("camshaft", "endPlay", "spline-end", second));
    return rules.problems();
  }

  private static String row(String part, String property, String station, String choice) {
    String[] cells = choice.split(",", -1);
    return ROW.formatted(
        part, part, property, station, cells[0].strip(), cells[1], cells[2], cells[3].strip());
  }
}
