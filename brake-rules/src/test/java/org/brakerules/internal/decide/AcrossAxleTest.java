package org.brakerules.internal.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.brakerules.internal.fact.UnlikePartner;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.SlackAdjuster;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In what two ends of an axle differ: only in what both state. */
class AcrossAxleTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final WheelEnd USUAL =
      end(LEFT, "clamp", "30", "standard", "automatic-clutch", "5.5 in");

  @ParameterizedTest(name = "{0} {1} {2}, {3}, arm {4}: {5}")
  @CsvSource({
    "clamp,   30, standard, automatic-clutch, 5.5 in,   ''",
    "clamp,   30, standard, automatic-clutch, 139.7 mm, ''",
    "clamp,   24, standard, automatic-clutch, 5.5 in,   CHAMBER_SIZE",
    "bolt,    30, standard, automatic-clutch, 5.5 in,   CHAMBER_SIZE",
    "clamp,   30, long,     automatic-clutch, 5.5 in,   STROKE_CLASS",
    "clamp,   30, standard, automatic-pawl,   5.5 in,   ADJUSTER_KIND",
    "clamp,   30, standard, manual,           5.5 in,   ADJUSTER_KIND",
    "clamp,   30, standard, automatic-clutch, 6 in,     ARM_LENGTH",
    "bolt,    30, long,     manual,           6 in,     CHAMBER_SIZE STROKE_CLASS ADJUSTER_KIND ARM_LENGTH",
    "unknown, 24, standard, automatic-clutch, 5.5 in,   ''",
    "bolt,    '', standard, automatic-clutch, 5.5 in,   ''",
    "clamp,   30, unknown,  automatic-clutch, 5.5 in,   ''",
    "clamp,   30, standard, unknown,          5.5 in,   ''",
    "clamp,   30, standard, automatic-clutch, '',       ''",
  })
  void both_ends_are_told_of_each_difference(
      String family,
      String type,
      String strokeClass,
      String adjuster,
      String arm,
      String expected) {
    WheelEnd across = end(LEFT.partner(), family, type, strokeClass, adjuster, arm);
    List<UnlikePartner> differences =
        AcrossAxle.differences(new Axle(2, AxleKind.DRIVE, List.of(USUAL, across)));
    for (WheelEndPath end : List.of(LEFT, LEFT.partner())) {
      assertThat(
              differences.stream()
                  .filter(one -> one.wheelEnd().equals(end))
                  .map(one -> one.matter().name()))
          .as("%s", end)
          .isEqualTo(expected.isEmpty() ? List.of() : List.of(expected.split(" ")));
    }
  }

  @Test
  void one_end_alone_differs_from_nothing() {
    assertThat(AcrossAxle.differences(new Axle(2, AxleKind.DRIVE, List.of(USUAL)))).isEmpty();
  }

  @Test
  void an_arm_that_is_not_there_has_no_length() {
    WheelEndPath path = LEFT.partner();
    Measurement<Length> other =
        Measurement.of(Length.parse("6 in"), Station.WHOLE_PART, Method.STEEL_RULE);
    SlackAdjuster notThere =
        SlackAdjuster.builder(Tag.notFitted(path.place(PartKind.SLACK_ADJUSTER)))
            .armLength(other)
            .build();
    WheelEnd across = new WheelEnd(path, USUAL.layout(), List.of(notThere));
    assertThat(AcrossAxle.differences(new Axle(2, AxleKind.DRIVE, List.of(USUAL, across))))
        .isEmpty();
  }

  private static WheelEnd end(
      WheelEndPath path,
      String family,
      String type,
      String strokeClass,
      String adjuster,
      String arm) {
    Layout layout =
        Layout.of(CamshaftLayout.TUBE)
            .chamber(
                new ChamberSize(
                    constant(ChamberFamily.class, family),
                    type,
                    constant(StrokeClass.class, strokeClass),
                    Optional.empty(),
                    ""))
            .adjuster(constant(AdjusterKind.class, adjuster))
            .build();
    Measurement<Length> length =
        arm.isEmpty()
            ? Measurement.notTaken()
            : Measurement.of(Length.parse(arm), Station.WHOLE_PART, Method.STEEL_RULE);
    return new WheelEnd(
        path, layout, List.of(SlackAdjuster.asFound(path).armLength(length).build()));
  }

  private static <E extends Enum<E>> E constant(Class<E> type, String name) {
    return Enum.valueOf(type, name.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
