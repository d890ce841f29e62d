package org.brakerules.harness.sheet.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Side;
import org.junit.jupiter.params.provider.Arguments;

/** Every way in which a wheel end can be drawn, with every part that it can have. */
final class Brakes {

  static final List<Spot> EVERY_PART =
      Arrays.stream(PartKind.values())
          .flatMap(kind -> kind.stations().stream().map(station -> new Spot(kind, station)))
          .toList();

  private Brakes() {}

  static Stream<Arguments> all() {
    return Arrays.stream(Side.values())
        .flatMap(
            side ->
                Arrays.stream(Hand.values())
                    .flatMap(
                        hand ->
                            Arrays.stream(CamshaftLayout.values())
                                .map(layout -> Arguments.of(side, hand, layout))));
  }

  static WheelEndDrawing drawing(Side side, Hand hand, CamshaftLayout layout) {
    return new WheelEndDrawing(side, hand, layout, EVERY_PART);
  }
}
