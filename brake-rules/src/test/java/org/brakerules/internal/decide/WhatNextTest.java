package org.brakerules.internal.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.table.TableTexts;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.NextLook;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In which order the open looks of a job come. Points and rules invented. */
class WhatNextTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final Place SHAFT = LEFT.place(PartKind.CAMSHAFT);
  private static final Place DRUM = LEFT.place(PartKind.DRUM);
  private static final Place SHOE = LEFT.place(PartKind.SHOE, Station.UPPER);

  /** A crack of the drum decides the drum alone, a blue one the lining and the shoes as well. */
  private final WhatNext next =
      new WhatNext(
          TableTexts.points(
              point("drum", "outsideCrack"),
              point("drum", "blue"),
              point("drum", "opensOnApplication").replace("at-rest", "applied"),
              point("drum", "layout.adjuster"),
              point("shoe", "layout.adjuster"),
              point("shoe", "vehicle.builtOn"),
              point("drum", "vehicle.builtOn")),
          new Bearings(
              Tables.load(),
              List.of(
                  rule(PartKind.LINING, "drum.blue"),
                  rule(PartKind.SHOE, "drum.blue"),
                  rule(PartKind.CAMSHAFT, "layout.adjuster"))));

  @Test
  void a_look_bears_on_its_own_part_and_on_the_kinds_whose_rules_read_it() {
    List<Decision> decisions =
        List.of(
            undecided(SHAFT),
            undecided(SHOE),
            undecided(DRUM, look(DRUM, "drum.outside-crack"), look(DRUM, "drum.blue")));
    assertThat(next.of(decisions, Scope.WHEEL_ON))
        .containsExactly(
            new NextLook(DRUM, "drum.blue", List.of(SHOE, DRUM)),
            new NextLook(DRUM, "drum.outside-crack", List.of(DRUM)));
  }

  @Test
  void a_look_bears_on_no_part_that_is_decided_and_on_no_other_wheel_end() {
    Place across = LEFT.partner().place(PartKind.SHOE, Station.UPPER);
    List<Decision> decisions =
        List.of(
            decided(SHOE, Disposition.REPLACE),
            undecided(DRUM, look(DRUM, "drum.blue")),
            undecided(across));
    assertThat(next.of(decisions, Scope.WHEEL_ON))
        .containsExactly(new NextLook(DRUM, "drum.blue", List.of(DRUM)));
  }

  /**
   * The layout of a brake is stated once, and bears on every part that asks or is decided by it.
   */
  @Test
  void a_statement_is_asked_for_once_for_all_parts_of_a_wheel_end() {
    List<Decision> decisions =
        List.of(
            undecided(SHAFT),
            undecided(SHOE, state(SHOE, "shoe.layout.adjuster")),
            undecided(DRUM, state(DRUM, "drum.layout.adjuster")));
    assertThat(next.of(decisions, Scope.WHEEL_ON))
        .containsExactly(new NextLook(SHOE, "shoe.layout.adjuster", List.of(SHAFT, SHOE, DRUM)));
  }

  @Test
  void a_statement_is_asked_for_at_each_wheel_end() {
    Place across = LEFT.partner().place(PartKind.DRUM);
    List<Decision> decisions =
        List.of(
            undecided(DRUM, state(DRUM, "drum.vehicle.built-on")),
            undecided(across, state(across, "drum.vehicle.built-on")));
    assertThat(next.of(decisions, Scope.WHEEL_ON))
        .extracting(NextLook::part)
        .containsExactly(DRUM, across);
  }

  @ParameterizedTest(name = "{0} {1} on {2} comes before {3} {4} on {5}")
  @CsvSource({
    // on most parts first, whatever it takes
    "MEASURE, CAMSHAFT_OUT, drum.blue,    STATE,   WHEEL_ON,     drum.outside-crack",
    // then what needs less taken apart
    "MEASURE, WHEEL_ON,     drum.outside-crack, LOOK,    DRUM_OFF,     drum.bell-mouthed",
    "LOOK,    DRUM_OFF,     drum.outside-crack, STATE,   SHOES_OFF,    drum.bell-mouthed",
    // then a statement before a look before a measurement
    "STATE,   DRUM_OFF,     drum.outside-crack, LOOK,    DRUM_OFF,     drum.bell-mouthed",
    "LOOK,    DRUM_OFF,     drum.outside-crack, MEASURE, DRUM_OFF,     drum.bell-mouthed",
  })
  void the_most_telling_and_least_costly_comes_first(
      Needed.Task first,
      Scope firstFrom,
      String firstPoint,
      Needed.Task second,
      Scope secondFrom,
      String secondPoint) {
    Needed one = needed(DRUM, firstPoint, first, firstFrom);
    Needed other = needed(DRUM, secondPoint, second, secondFrom);
    List<Decision> decisions = List.of(undecided(SHOE), undecided(DRUM, other, one));
    assertThat(next.of(decisions, Scope.WHEEL_ON))
        .extracting(NextLook::point)
        .containsExactly(firstPoint, secondPoint);
  }

  @ParameterizedTest(name = "at {0}: {1} before {2}")
  @CsvSource({
    "WHEEL_ON, drum.opens-on-application, drum.blue",
    "DRUM_OFF, drum.blue, drum.opens-on-application",
    "SHOES_OFF, drum.blue, drum.opens-on-application",
  })
  void what_the_brake_is_applied_for_comes_last_once_the_drum_is_off(
      Scope scope, String first, String second) {
    Needed applied = needed(DRUM, "drum.opens-on-application", Needed.Task.STATE, Scope.WHEEL_ON);
    List<Decision> decisions = List.of(undecided(DRUM, applied, look(DRUM, "drum.blue")));
    assertThat(next.of(decisions, scope))
        .extracting(NextLook::point)
        .containsExactly(first, second);
  }

  @Test
  void while_any_wheel_end_is_on_hold_no_brake_is_applied_for_a_look() {
    Place across = LEFT.partner().place(PartKind.DRUM);
    List<Decision> decisions =
        List.of(
            held(DRUM, look(DRUM, "drum.blue"), look(DRUM, "drum.opens-on-application")),
            undecided(across, look(across, "drum.opens-on-application")));
    assertThat(next.of(decisions, Scope.WHEEL_ON))
        .containsExactly(new NextLook(DRUM, "drum.blue", List.of(DRUM)));
  }

  private static String point(String part, String property) {
    String id = property.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    return part
        + "."
        + id
        + ","
        + part
        + ","
        + property
        + ",,wheel-on,,always,at-rest,fact,eye,Look.";
  }

  private static RuleText rule(PartKind subject, String... beside) {
    return InventedRule.of(subject, Verdict.REPLACE, beside);
  }

  private static Needed look(Place part, String point) {
    return needed(part, point, Needed.Task.LOOK, Scope.WHEEL_ON);
  }

  private static Needed state(Place part, String point) {
    return needed(part, point, Needed.Task.STATE, Scope.WHEEL_ON);
  }

  private static Needed needed(Place part, String point, Needed.Task task, Scope from) {
    return new Needed(
        part,
        point,
        task,
        "what",
        "why",
        "eye",
        "Look.",
        part.station(),
        List.of(),
        List.of(),
        List.of(),
        from);
  }

  private static Decision undecided(Place part, Needed... needed) {
    return decision(part, Disposition.UNDECIDED, false, List.of(needed));
  }

  private static Decision held(Place part, Needed... needed) {
    return decision(part, Disposition.UNDECIDED, true, List.of(needed));
  }

  private static Decision decided(Place part, Disposition disposition) {
    return decision(part, disposition, false, List.of());
  }

  private static Decision decision(
      Place part, Disposition disposition, boolean hold, List<Needed> needed) {
    return new Decision(
        part,
        disposition,
        hold,
        RoadAnswer.SILENT,
        List.of(),
        needed,
        List.of(),
        List.of(),
        List.of());
  }
}
