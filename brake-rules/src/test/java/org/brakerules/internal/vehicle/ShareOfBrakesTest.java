package org.brakerules.internal.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.internal.vehicle.Criterion.DefectiveShare;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Share;
import org.brakerules.vehicle.BrakeCount;
import org.brakerules.vehicle.BrakeCount.Stroke;
import org.brakerules.vehicle.CriterionStatus.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** A fifth of the brakes, and what a brake beyond its stroke counts. */
class ShareOfBrakesTest {

  private static final DefectiveShare A_FIFTH =
      new DefectiveShare(Share.parse("20 %"), Length.parse("1/4 in"), true, true);
  private static final DefectiveShare IN_QUEBEC =
      new DefectiveShare(Share.parse("20 %"), Length.parse("6.4 mm"), false, false);

  /**
   * The table follows from the wording "equal to or more than 20 %", read in trade press; the
   * counts for 2 to 30 brakes were worked out from it by hand.
   */
  @ParameterizedTest(name = "{1} of {0} brakes")
  @CsvFileSource(resources = "/org/brakerules/fifth-of-the-brakes.csv", numLinesToSkip = 1)
  void the_count_that_makes_a_fifth_reaches_it_and_one_fewer_does_not(int brakes, int needed) {
    assertThat(share(A_FIFTH, brakes, needed, "0.5 in").needed()).isEqualTo(needed);
    assertThat(share(A_FIFTH, brakes, needed, "0.5 in").answer()).isEqualTo(Answer.REACHED);
    assertThat(share(A_FIFTH, brakes, needed - 1, "0.5 in").answer()).isEqualTo(Answer.NOT_REACHED);
  }

  /** How halves count is from memory; the quarter inch was read in trade press. */
  @ParameterizedTest(name = "two of ten brakes {0} beyond: {1}")
  @CsvSource({
    "0.249 in, NOT_REACHED",
    "0.25 in, REACHED",
    "6.35 mm, REACHED",
    "0.001 in, NOT_REACHED"
  })
  void a_quarter_inch_beyond_counts_whole_and_less_counts_half(String beyond, Answer answer) {
    assertThat(share(A_FIFTH, 10, 2, beyond).answer()).isEqualTo(answer);
  }

  @Test
  void halves_pair_up_and_one_left_over_does_not_count() {
    assertThat(share(A_FIFTH, 10, 4, "0.1 in").certain()).isEqualTo(2);
    assertThat(share(A_FIFTH, 10, 3, "0.1 in").certain()).isEqualTo(1);
    assertThat(share(A_FIFTH, 10, 3, "0.1 in").finding())
        .isEqualTo(
            "Of the 10 brakes of the axles in this job 0 count whole and 3 half by their stroke: 1,"
                + " and a half left over that does not count. 2 make 20 %. With everything that is"
                + " open it could be 1.");
  }

  /** Quebec, C-24.2, r. 32, s. 166(9): by 6.4 mm or more; read in the law. */
  @ParameterizedTest(name = "two of ten chambers {0} beyond: {1}")
  @CsvSource({"6.39 mm, NOT_REACHED", "6.4 mm, REACHED", "1/4 in, NOT_REACHED"})
  void in_quebec_a_chamber_counts_from_six_point_four_millimetres(String beyond, Answer answer) {
    assertThat(share(IN_QUEBEC, 10, 2, beyond).answer()).isEqualTo(answer);
  }

  @Test
  void a_stroke_that_is_open_leaves_the_answer_open_as_long_as_it_could_turn_it() {
    List<BrakeCount> one = new ArrayList<>(within(9));
    one.add(brake(10, Stroke.OPEN, Optional.empty(), List.of()));
    assertThat(new ShareOfBrakes(A_FIFTH, one).answer()).isEqualTo(Answer.NOT_REACHED);
    assertThat(new ShareOfBrakes(A_FIFTH, one).open())
        .containsExactly(
            "the applied stroke of axle10/left, read as its limit wants it",
            "every axle of the vehicle or combination that is not in this job");

    List<BrakeCount> two = new ArrayList<>(within(8));
    two.add(brake(9, Stroke.OPEN, Optional.empty(), List.of()));
    two.add(brake(10, Stroke.OPEN, Optional.empty(), List.of()));
    assertThat(new ShareOfBrakes(A_FIFTH, two).answer()).isEqualTo(Answer.OPEN);
  }

  @Test
  void another_defect_makes_no_brake_defective_for_certain_but_may() {
    List<BrakeCount> brakes = new ArrayList<>(within(3));
    brakes.add(brake(4, Stroke.WITHIN, Optional.empty(), List.of("axle4/left/drum")));
    ShareOfBrakes share = new ShareOfBrakes(A_FIFTH, brakes);
    assertThat(share.answer()).isEqualTo(Answer.OPEN);
    assertThat(share.open())
        .contains(
            "whether axle4/left is a defective brake for axle4/left/drum, which fails the law");
    assertThat(new ShareOfBrakes(IN_QUEBEC, brakes).answer()).isEqualTo(Answer.NOT_REACHED);
  }

  @Test
  void a_half_that_may_be_whole_for_another_defect_is_counted_whole_at_most() {
    List<BrakeCount> brakes = new ArrayList<>(within(4));
    brakes.add(
        brake(5, Stroke.BEYOND, Optional.of(Length.parse("0.1 in")), List.of("axle5/left/drum")));
    ShareOfBrakes share = new ShareOfBrakes(A_FIFTH, brakes);
    assertThat(share.certain()).isZero();
    assertThat(share.atMost()).isEqualTo(1);
    assertThat(share.answer()).isEqualTo(Answer.OPEN);
  }

  private static ShareOfBrakes share(DefectiveShare share, int brakes, int beyond, String by) {
    List<BrakeCount> counts = new ArrayList<>(within(brakes - beyond));
    for (int i = 0; i < beyond; i++) {
      counts.add(brake(50 + i, Stroke.BEYOND, Optional.of(Length.parse(by)), List.of()));
    }
    return new ShareOfBrakes(share, counts);
  }

  private static List<BrakeCount> within(int count) {
    List<BrakeCount> brakes = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      brakes.add(brake(i, Stroke.WITHIN, Optional.empty(), List.of()));
    }
    return brakes;
  }

  private static BrakeCount brake(
      int axle, Stroke stroke, Optional<Length> beyond, List<String> otherwise) {
    return new BrakeCount(WheelEndPath.of(axle, Side.LEFT), stroke, beyond, otherwise);
  }
}
