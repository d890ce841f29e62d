package org.brakerules.harness.sheet.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.brakerules.model.part.Hand;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The S between its two rollers, held against what a technician looks for. */
class CamProfileTest {

  private static final Point SHAFT = new Point(100, 100);

  /** What the eye does not see at this size. */
  private static final double HAIR = 0.2;

  @ParameterizedTest
  @CsvSource({"LEFT, -1", "LEFT, 1", "RIGHT, -1", "RIGHT, 1"})
  void a_released_roller_touches_the_cam(Hand hand, int side) {
    Outline cam = Outline.shape(CamProfile.of(SHAFT, hand));
    Point roller = roller(side, 0);
    assertThat(Shapes.toLine(cam, roller)).isCloseTo(CamProfile.ROLLER, within(HAIR));
    assertThat(Shapes.isInside(cam, roller)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"LEFT, -1", "LEFT, 1", "RIGHT, -1", "RIGHT, 1"})
  void a_released_roller_lies_in_the_crook_so_that_either_turn_meets_it(Hand hand, int side) {
    for (double degrees : List.of(-5.0, 5.0)) {
      Outline cam = Shapes.turned(CamProfile.of(SHAFT, hand), SHAFT, degrees);
      assertThat(Shapes.toLine(cam, roller(side, 0)))
          .as("turned by %s degrees", degrees)
          .isLessThan(CamProfile.ROLLER - HAIR);
    }
  }

  @ParameterizedTest
  @CsvSource({"LEFT, 1, -1", "LEFT, 1, 1", "RIGHT, -1, -1", "RIGHT, -1, 1"})
  void a_left_hand_cam_turned_against_the_clock_lifts_its_rollers_and_a_right_hand_one_with_it(
      Hand hand, int way, int side) {
    for (double degrees : List.of(20.0, 60.0, 100.0)) {
      Outline cam = Shapes.turned(CamProfile.of(SHAFT, hand), SHAFT, way * degrees);
      Point lifted = roller(side, 9 * Math.toRadians(degrees));
      assertThat(Shapes.toLine(cam, lifted))
          .as("turned by %s degrees", degrees)
          .isCloseTo(CamProfile.ROLLER, within(HAIR));
    }
  }

  @Test
  void a_right_hand_cam_is_the_mirror_image_of_a_left_hand_one() {
    List<Point> left = CamProfile.of(SHAFT, Hand.LEFT);
    List<Point> right = CamProfile.of(SHAFT, Hand.RIGHT);
    Outline mirrored = Outline.shape(left).mirrored(SHAFT.x());
    assertThat(right).allMatch(point -> Shapes.toLine(mirrored, point) < 0.001);
    assertThat(right).anyMatch(point -> Shapes.toLine(Outline.shape(left), point) > 5);
  }

  @Test
  void the_outline_does_not_cross_itself_and_holds_the_shaft() {
    Outline cam = Outline.shape(CamProfile.of(SHAFT, Hand.LEFT));
    assertThat(Shapes.isInside(cam, SHAFT)).isTrue();
    assertThat(Shapes.toLine(cam, SHAFT)).isGreaterThan(10);
  }

  private static Point roller(int side, double lift) {
    return SHAFT.plus(0, side * (CamProfile.AT_REST + lift));
  }
}
