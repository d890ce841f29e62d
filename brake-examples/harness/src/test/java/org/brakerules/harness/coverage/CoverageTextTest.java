package org.brakerules.harness.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakerules.trial.coverage.ListedItem;
import org.junit.jupiter.api.Test;

class CoverageTextTest {

  @Test
  void what_is_open_comes_first_then_the_counts() {
    assertThat(CoverageText.of(SmallCoverage.whole()))
        .isEqualTo(
            """
            Coverage of rule base abc, version 0.1.0

            1 rule, 2 rows of limits, 2 inspection points and 2 sources, shown by 2 cases. Rules and their
            conditions are shown by the cases beside the rules alone. Limits are also shown by 3 jobs that the
            program makes, each for one row: without a reading, and with readings just below, at and just above
            its value in every unit of its kind.

            Open: 4

              hose
                condition-fails   HOSE-010 Hose( leak == Sign.SEEN )
                                  no case in which it alone fails

              hub
                limit-no-reading  hub.play.max
                                  no case with the reading left out
                point             hub.crack
                                  no rule and no limit reads it

              sources
                source            UNUSED
                                  nothing rests on it

            Rows of limits that jobs made by the program alone show: 1

                hub.run-out.max

            Shown

                                          fired    near miss   conditions  limit sides  points read         open
            hose                         1 of 1       1 of 1       0 of 1       0 of 0       1 of 1            1
            hub                          0 of 0       0 of 0       0 of 0       3 of 4       0 of 1            2
            all                          1 of 1       1 of 1       0 of 1       3 of 4       1 of 2            4
            """);
  }

  @Test
  void chosen_component_is_shown_in_detail_without_what_belongs_to_others() {
    assertThat(CoverageText.of(SmallCoverage.hose()))
        .isEqualTo(
            """
            Coverage of rule base abc, version 0.1.0

            1 rule, 0 rows of limits, 1 inspection point and 1 source, shown by 2 cases. Rules and their
            conditions are shown by the cases beside the rules alone. Limits are also shown by 3 jobs that the
            program makes, each for one row: without a reading, and with readings just below, at and just above
            its value in every unit of its kind.

            Open: 1

              hose
                condition-fails   HOSE-010 Hose( leak == Sign.SEEN )
                                  no case in which it alone fails

            Shown

                                          fired    near miss   conditions  limit sides  points read         open
            hose                         1 of 1       1 of 1       0 of 1       0 of 0       1 of 1            1

            Rule HOSE-010 Leaking hose
              fires in      1 case
                            hose: A hose that <leaks>
              near in       7 cases
                            hose: A tight hose
                            hub: A sound hub
                            hub: A sound hub
                            hub: A sound hub
                            hub: A sound hub
                            and 2 more
              only says so  1 case
                            hose: A missing hose
              Hose( leak == Sign.SEEN )
                holds in    1 case, "A hose that <leaks>" (hose)
                fails in    no case

            Inspection point hose.leak
              needed        always
              rules         HOSE-010

            Source MANUAL, A manual
              4-30
                rules       HOSE-010
            """);
  }

  @Test
  void what_is_listed_stands_behind_what_is_open_with_its_reason() {
    CoverageReport report =
        SmallCoverage.whole(
            new ListedItem("point", "hub.crack", "No rule yet"),
            new ListedItem("point", "hub.rust", "Never was"));

    assertThat(CoverageText.of(report))
        .contains(
            """
            Open, with a reason in coverage-open.csv or unread.csv: 1

                point             hub.crack
                                  No rule yet

            In coverage-open.csv, but not open; take it out: 1

                point             hub.rust
                                  Never was
            """);
    assertThat(report.hasOpen()).isTrue();
  }

  @Test
  void nothing_is_open_where_everything_open_is_listed() {
    assertThat(SmallCoverage.whole(SmallCoverage.reasons()).hasOpen()).isFalse();
    assertThat(SmallCoverage.whole().hasOpen()).isTrue();
  }

  @Test
  void row_that_is_not_needed_leaves_work_in_the_whole_rule_base_only() {
    ListedItem never = new ListedItem("point", "hub.rust", "Never was");
    CoverageReport whole = SmallCoverage.whole(SmallCoverage.reasons());
    CoverageReport alone =
        CoverageReport.of(SmallCoverage.whole(never).coverage(), List.of("hose"));

    assertThat(whole.notNeeded()).isEmpty();
    assertThat(SmallCoverage.whole(never).notNeeded()).containsExactly(never);
    assertThat(alone.notNeeded()).isEmpty();
  }
}
