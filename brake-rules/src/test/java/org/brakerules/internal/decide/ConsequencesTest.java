package org.brakerules.internal.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;

/**
 * Reasons that go in a circle fall, the others stand. The rules here are invented; no rule of the
 * rule base makes a circle today.
 */
class ConsequencesTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final WheelEndPath RIGHT = WheelEndPath.of(2, Side.RIGHT);

  private static final Part SHAFT = asFound(LEFT.place(PartKind.CAMSHAFT));
  private static final Part HEAD = asFound(LEFT.place(PartKind.CAMSHAFT_BUSHING, Station.HEAD_END));
  private static final Part SPLINE =
      asFound(LEFT.place(PartKind.CAMSHAFT_BUSHING, Station.SPLINE_END));
  private static final Part SEAL = asFound(LEFT.place(PartKind.CAMSHAFT_SEAL, Station.HEAD_END));

  @Test
  void a_finding_at_first_hand_stands() {
    Finding worn = replace(SHAFT);
    assertThat(standing(worn)).containsExactly(worn);
  }

  @Test
  void a_consequence_of_a_finding_at_first_hand_stands() {
    Finding worn = replace(SHAFT);
    Finding bushing = replace(HEAD, PartKind.CAMSHAFT);
    assertThat(standing(worn, bushing)).containsExactly(worn, bushing);
    assertThat(standing(bushing, worn)).containsExactly(bushing, worn);
  }

  @Test
  void two_parts_that_fall_only_because_of_each_other_both_stay() {
    Finding shaft = replace(SHAFT, PartKind.CAMSHAFT_BUSHING);
    Finding bushing = replace(HEAD, PartKind.CAMSHAFT);
    assertThat(standing(shaft, bushing)).isEmpty();
  }

  @Test
  void the_circle_breaks_on_the_side_that_has_a_reason_of_its_own() {
    Finding rough = replace(HEAD);
    Finding shaft = replace(SHAFT, PartKind.CAMSHAFT_BUSHING);
    Finding bushing = replace(HEAD, PartKind.CAMSHAFT);
    assertThat(standing(rough, shaft, bushing)).containsExactly(rough, shaft);
  }

  @Test
  void a_part_is_no_reason_for_itself_but_its_like_at_the_other_station_is() {
    Finding rough = replace(HEAD);
    Finding same = replace(HEAD, PartKind.CAMSHAFT_BUSHING);
    Finding other = replace(SPLINE, PartKind.CAMSHAFT_BUSHING);
    assertThat(standing(rough, same, other)).containsExactly(rough, other);
  }

  @Test
  void two_like_parts_that_fall_only_because_of_each_other_both_stay() {
    Finding head = replace(HEAD, PartKind.CAMSHAFT_BUSHING);
    Finding spline = replace(SPLINE, PartKind.CAMSHAFT_BUSHING);
    assertThat(standing(head, spline)).isEmpty();
  }

  @Test
  void a_circle_over_three_parts_falls_and_takes_what_hangs_on_it() {
    Finding shaft = replace(SHAFT, PartKind.CAMSHAFT_SEAL);
    Finding bushing = replace(HEAD, PartKind.CAMSHAFT);
    Finding seal = replace(SEAL, PartKind.CAMSHAFT_BUSHING);
    Finding look = finding(Verdict.LOOK_AT, asFound(LEFT.place(PartKind.DRUM)), PartKind.CAMSHAFT);
    assertThat(standing(shaft, bushing, seal, look)).isEmpty();
  }

  @Test
  void a_long_chain_stands() {
    Finding shaft = replace(SHAFT);
    Finding bushing = replace(HEAD, PartKind.CAMSHAFT);
    Finding seal = replace(SEAL, PartKind.CAMSHAFT_BUSHING);
    assertThat(standing(seal, bushing, shaft)).containsExactly(seal, bushing, shaft);
  }

  @Test
  void two_causes_must_both_hold() {
    Finding shaft = replace(SHAFT);
    Finding seal = replace(SEAL, PartKind.CAMSHAFT, PartKind.CAMSHAFT_BUSHING);
    Finding head = replace(HEAD);
    assertThat(standing(shaft, seal)).containsExactly(shaft);
    assertThat(standing(shaft, seal, head)).containsExactly(shaft, seal, head);
  }

  @Test
  void a_part_of_another_wheel_end_is_no_cause() {
    Finding other = replace(asFound(RIGHT.place(PartKind.CAMSHAFT)));
    Finding bushing = replace(HEAD, PartKind.CAMSHAFT);
    assertThat(standing(other, bushing)).containsExactly(other);
  }

  @Test
  void a_new_part_that_is_replaced_is_no_cause_because_it_leaves_no_marker() {
    Part fresh = PartKind.CAMSHAFT.blank(Tag.fittedNew(LEFT.place(PartKind.CAMSHAFT)));
    Finding damaged = replace(fresh);
    Finding bushing = replace(HEAD, PartKind.CAMSHAFT);
    assertThat(standing(damaged, bushing)).containsExactly(damaged);
  }

  @Test
  void a_part_that_is_only_adjusted_is_no_cause() {
    Finding shimmed = finding(Verdict.ADJUST, SHAFT);
    Finding bushing = replace(HEAD, PartKind.CAMSHAFT);
    assertThat(standing(shimmed, bushing)).containsExactly(shimmed);
  }

  @Test
  void the_two_ends_of_an_axle_are_no_reason_for_each_other() {
    Finding left = replaceBecauseAcross(LEFT);
    Finding right = replaceBecauseAcross(RIGHT);
    assertThat(standing(left, right)).isEmpty();
  }

  @Test
  void an_end_with_a_reason_of_its_own_pulls_the_other_and_is_not_pulled_back() {
    Finding worn = replace(asFound(LEFT.place(PartKind.LINING, Station.UPPER)));
    Finding left = replaceBecauseAcross(LEFT);
    Finding right = replaceBecauseAcross(RIGHT);
    assertThat(standing(worn, left, right)).containsExactly(worn, right);
  }

  /** The other lining of the left end hangs on the right end, which hangs on the worn one. */
  @Test
  void a_reason_may_cross_the_axle_and_come_back_to_another_part() {
    Finding worn = replace(asFound(LEFT.place(PartKind.LINING, Station.LOWER)));
    Finding left = replaceBecauseAcross(LEFT);
    Finding right = replaceBecauseAcross(RIGHT);
    assertThat(standing(worn, left, right)).containsExactly(worn, left, right);
  }

  /** The upper lining of an end, because linings across the axle are replaced. */
  private static Finding replaceBecauseAcross(WheelEndPath end) {
    Replaced across = new Replaced(PartKind.LINING, end.partner());
    return finding(
        Verdict.REPLACE, asFound(end.place(PartKind.LINING, Station.UPPER)), List.of(across));
  }

  private static List<Finding> standing(Finding... findings) {
    return new Consequences(List.of(findings)).withoutCircles();
  }

  private static Finding replace(Part part, PartKind... causes) {
    return finding(Verdict.REPLACE, part, causes);
  }

  private static Finding finding(Verdict verdict, Part part, PartKind... causes) {
    return finding(
        verdict,
        part,
        Arrays.stream(causes).map(kind -> (Object) new Replaced(kind, LEFT)).toList());
  }

  private static Finding finding(Verdict verdict, Part part, List<?> facts) {
    RuleText rule = InventedRule.of(part.partKind(), verdict);
    return new Finding(rule, verdict, part, "", List.copyOf(facts));
  }

  private static Part asFound(Place place) {
    return place.kind().blank(Tag.asFound(place));
  }
}
