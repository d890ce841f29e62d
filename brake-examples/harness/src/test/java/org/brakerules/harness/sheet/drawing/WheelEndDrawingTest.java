package org.brakerules.harness.sheet.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Side;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where the parts of a wheel end are drawn. */
class WheelEndDrawingTest {

  @ParameterizedTest
  @MethodSource("org.brakerules.harness.sheet.drawing.Brakes#all")
  void the_cam_and_all_that_moves_lie_inside_the_drum(Side side, Hand hand, CamshaftLayout layout) {
    List<Drawn> drawn = Brakes.drawing(side, hand, layout).drawn();
    for (PartKind kind :
        List.of(PartKind.CAMSHAFT, PartKind.CAM_ROLLER, PartKind.SHOE, PartKind.LINING)) {
      assertThat(points(drawn, kind))
          .as(kind.inWords())
          .isNotEmpty()
          .allMatch(point -> BrakeView.AXLE.to(point) < BrakeView.BORE);
    }
  }

  @ParameterizedTest
  @MethodSource("org.brakerules.harness.sheet.drawing.Brakes#all")
  void a_roller_lies_in_the_end_of_its_shoe_and_the_other_end_on_its_anchor_pin(
      Side side, Hand hand, CamshaftLayout layout) {
    List<Drawn> drawn = Brakes.drawing(side, hand, layout).drawn();
    for (Station station : List.of(Station.UPPER, Station.LOWER)) {
      Outline shoe = outline(drawn, new Spot(PartKind.SHOE, station));
      for (PartKind kind : List.of(PartKind.CAM_ROLLER, PartKind.ANCHOR_PIN)) {
        Point middle = middle(outline(drawn, new Spot(kind, station)));
        assertThat(Shapes.toLine(shoe, middle)).as("%s %s", station, kind).isLessThan(2);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("org.brakerules.harness.sheet.drawing.Brakes#all")
  void each_roller_touches_the_cam(Side side, Hand hand, CamshaftLayout layout) {
    List<Drawn> drawn = Brakes.drawing(side, hand, layout).drawn();
    Outline cam = outline(drawn, Spot.of(PartKind.CAMSHAFT));
    for (Station station : List.of(Station.UPPER, Station.LOWER)) {
      Point roller = middle(outline(drawn, new Spot(PartKind.CAM_ROLLER, station)));
      assertThat(Shapes.toLine(cam, roller)).isCloseTo(CamProfile.ROLLER, within(0.2));
    }
  }

  @ParameterizedTest
  @MethodSource("org.brakerules.harness.sheet.drawing.Brakes#all")
  void the_anchor_pins_are_opposite_the_cam_and_the_cam_is_behind_the_axle(
      Side side, Hand hand, CamshaftLayout layout) {
    List<Drawn> drawn = Brakes.drawing(side, hand, layout).drawn();
    double rear = side == Side.LEFT ? 1 : -1;
    double axle = BrakeView.AXLE.x();
    assertThat(points(drawn, PartKind.CAMSHAFT)).allMatch(one -> rear * (one.x() - axle) > 0);
    assertThat(points(drawn, PartKind.ANCHOR_PIN)).allMatch(one -> rear * (one.x() - axle) < 0);
  }

  @Test
  void a_right_brake_is_the_mirror_image_of_a_left_brake_with_a_shaft_of_the_other_hand() {
    List<Drawn> left = Brakes.drawing(Side.LEFT, Hand.LEFT, CamshaftLayout.TUBE).drawn();
    List<Drawn> right = Brakes.drawing(Side.RIGHT, Hand.RIGHT, CamshaftLayout.TUBE).drawn();
    for (PartKind kind :
        List.of(PartKind.CAMSHAFT, PartKind.CAM_ROLLER, PartKind.SHOE, PartKind.ANCHOR_PIN)) {
      assertThat(points(right, kind))
          .isEqualTo(
              points(left, kind).stream()
                  .map(point -> point.mirrored(BrakeView.AXLE.x()))
                  .toList());
    }
  }

  @Test
  void the_s_goes_by_the_hand_of_the_shaft_and_not_by_the_side() {
    Outline left =
        outline(
            Brakes.drawing(Side.LEFT, Hand.LEFT, CamshaftLayout.TUBE).drawn(),
            Spot.of(PartKind.CAMSHAFT));
    Outline right =
        outline(
            Brakes.drawing(Side.RIGHT, Hand.LEFT, CamshaftLayout.TUBE).drawn(),
            Spot.of(PartKind.CAMSHAFT));
    double apart = 2 * (BrakeView.CAM.x() - BrakeView.AXLE.x());
    assertThat(Shapes.points(left))
        .allMatch(point -> Shapes.toLine(right, point.plus(-apart, 0)) < 0.01);
  }

  @Test
  void the_chamber_pushes_the_arm_the_way_that_the_cam_turns_to_apply() {
    for (Side side : Side.values()) {
      assertThat(chamberFromPin(side, Hand.LEFT)).as("pushes to the left").isPositive();
      assertThat(chamberFromPin(side, Hand.RIGHT)).as("pushes to the right").isNegative();
    }
  }

  private static double chamberFromPin(Side side, Hand hand) {
    List<Drawn> drawn = Brakes.drawing(side, hand, CamshaftLayout.TUBE).drawn();
    Point pin = middle(outline(drawn, new Spot(PartKind.CLEVIS_PIN, Station.LARGE)));
    Outline adjuster = outline(drawn, Spot.of(PartKind.SLACK_ADJUSTER));
    assertThat(Shapes.points(adjuster)).as("the arm points up").anyMatch(one -> one.y() > pin.y());
    return middle(outline(drawn, Spot.of(PartKind.CHAMBER))).x() - pin.x();
  }

  @Test
  void both_arrows_show_the_turn_to_apply() {
    for (Side side : Side.values()) {
      assertThat(arrows(side, Hand.LEFT)).hasSize(2).allMatch(way -> way > 0);
      assertThat(arrows(side, Hand.RIGHT)).hasSize(2).allMatch(way -> way < 0);
      assertThat(arrows(side, Hand.UNKNOWN)).isEmpty();
    }
  }

  /** For each arrow whether its line bends against the clock on its way to the head, or with it. */
  private static List<Double> arrows(Side side, Hand hand) {
    List<Drawn> drawn = Brakes.drawing(side, hand, CamshaftLayout.TUBE).drawn();
    List<Double> ways = new ArrayList<>();
    for (int i = 1; i < drawn.size(); i++) {
      if (isArrowHead(drawn.get(i))) {
        List<Point> line = Shapes.points(drawn.get(i - 1).outline());
        Point middle = line.get(line.size() / 2);
        Point start = line.get(0);
        Point end = line.get(line.size() - 1);
        assertThat(Shapes.toLine(drawn.get(i).outline(), end)).isLessThan(6);
        ways.add(
            (end.x() - middle.x()) * (middle.y() - start.y())
                - (end.y() - middle.y()) * (middle.x() - start.x()));
      }
    }
    return ways;
  }

  private static boolean isArrowHead(Drawn one) {
    return one.part().isEmpty()
        && one.fill().equals("black")
        && Shapes.points(one.outline()).size() == 3;
  }

  @Test
  void without_the_hand_no_s_is_drawn_but_the_round_that_the_rollers_rest_on() {
    Outline cam =
        outline(
            Brakes.drawing(Side.LEFT, Hand.UNKNOWN, CamshaftLayout.TUBE).drawn(),
            Spot.of(PartKind.CAMSHAFT));
    double round = CamProfile.AT_REST - CamProfile.ROLLER;
    assertThat(Shapes.points(cam))
        .allMatch(point -> Math.abs(BrakeView.CAM.to(point) - round) < 0.01);
  }

  private static List<Point> points(List<Drawn> drawn, PartKind kind) {
    return drawn.stream()
        .filter(one -> one.part().filter(spot -> spot.kind() == kind).isPresent())
        .flatMap(one -> Shapes.points(one.outline()).stream())
        .toList();
  }

  private static Outline outline(List<Drawn> drawn, Spot spot) {
    return drawn.stream()
        .filter(one -> one.part().filter(spot::equals).isPresent())
        .map(Drawn::outline)
        .findFirst()
        .orElseThrow();
  }

  private static Point middle(Outline outline) {
    List<Point> points = Shapes.points(outline);
    return new Point(
        points.stream().mapToDouble(Point::x).average().orElseThrow(),
        points.stream().mapToDouble(Point::y).average().orElseThrow());
  }
}
