package org.brakerules.harness.sheet.drawing;

import static org.assertj.core.api.Assertions.assertThat;

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

/** Where the numbers of the parts stand, and where their lines lead. */
class CalloutTest {

  @ParameterizedTest
  @MethodSource("org.brakerules.harness.sheet.drawing.Brakes#all")
  void every_part_has_a_number_whose_line_ends_on_it_and_on_nothing_above_it(
      Side side, Hand hand, CamshaftLayout layout) {
    WheelEndDrawing drawing = Brakes.drawing(side, hand, layout);
    List<Callout> callouts = drawing.callouts();
    assertThat(callouts)
        .extracting(Callout::spot)
        .containsExactlyInAnyOrderElementsOf(Brakes.EVERY_PART);
    for (Callout one : callouts) {
      assertThat(Brakes.EVERY_PART.get(one.index())).isEqualTo(one.spot());
      assertThat(seenAt(drawing.drawn(), one.part())).as("%s", one).contains(one.spot());
    }
  }

  /** The parts that show at a point: thin lines, and the uppermost of the filled shapes. */
  private static List<Spot> seenAt(List<Drawn> drawn, Point point) {
    List<Spot> seen = new ArrayList<>();
    for (Drawn one : drawn) {
      boolean covers = !one.fill().equals("none") && Shapes.isInside(one.outline(), point);
      if (covers) {
        seen.clear();
      }
      if (covers || Shapes.toLine(one.outline(), point) <= one.width() / 2 + 0.5) {
        one.part().ifPresent(seen::add);
      }
    }
    return seen;
  }

  @ParameterizedTest
  @MethodSource("org.brakerules.harness.sheet.drawing.Brakes#all")
  void no_two_numbers_touch_even_where_every_part_is_there(
      Side side, Hand hand, CamshaftLayout layout) {
    List<Point> numbers =
        Brakes.drawing(side, hand, layout).callouts().stream().map(Callout::number).toList();
    for (int i = 0; i < numbers.size(); i++) {
      for (int k = 0; k < i; k++) {
        assertThat(numbers.get(i).to(numbers.get(k))).as("%s, %s", i, k).isGreaterThan(28);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("org.brakerules.harness.sheet.drawing.Brakes#all")
  void no_line_runs_under_the_number_of_another_part(Side side, Hand hand, CamshaftLayout layout) {
    List<Callout> callouts = Brakes.drawing(side, hand, layout).callouts();
    for (Callout one : callouts) {
      Outline line = Outline.line(one.number(), one.part());
      assertThat(callouts)
          .filteredOn(other -> other != one && Shapes.toLine(line, other.number()) < 11)
          .as("%s", one)
          .isEmpty();
    }
  }

  @Test
  void two_parts_of_one_spot_get_a_number_each() {
    Spot shim = new Spot(PartKind.SHIM, Station.SPLINE_END);
    List<Callout> callouts =
        new WheelEndDrawing(Side.LEFT, Hand.LEFT, CamshaftLayout.TUBE, List.of(shim, shim))
            .callouts();
    assertThat(callouts).extracting(Callout::index).containsExactly(0, 1);
    assertThat(callouts.get(0).number().to(callouts.get(1).number())).isEqualTo(Rail.APART);
  }
}
