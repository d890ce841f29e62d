package org.brakerules.internal.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.internal.fact.ReadingsContradict;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.part.Lining;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Contradiction;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings that cannot both be right are told apart from those that are only unlikely. */
class ContradictionsTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);

  @ParameterizedTest(name = "applied {0} {1}, free {2} {3}: contradict {4}")
  @CsvSource({
    "0 in,      AS_FOUND,   1/2 in,   AS_FOUND,   true",
    "1/2 in,    AS_FOUND,   1/2 in,   AS_FOUND,   true",
    "12.7 mm,   AS_FOUND,   1/2 in,   AS_FOUND,   true",
    "0.501 in,  AS_FOUND,   1/2 in,   AS_FOUND,   false",
    "1/2 in,    AFTER_WORK, 1/2 in,   AFTER_WORK, true",
    "1/2 in,    AFTER_WORK, 3/4 in,   AS_FOUND,   false",
    "1/2 in,    UNKNOWN,    3/4 in,   AS_FOUND,   false",
  })
  void an_applied_stroke_is_longer_than_the_free_stroke_of_its_moment(
      String applied, Moment when, String free, Moment freeWhen, boolean contradict) {
    Chamber chamber =
        chamber(
            List.of(reading(applied, Method.FULL_APPLICATION).taken(when)),
            List.of(reading(free, Method.PRIED_BY_HAND).taken(freeWhen)));

    assertThat(found(chamber)).hasSize(contradict ? 1 : 0);
  }

  @Test
  void readings_are_not_held_against_each_other_if_one_was_taken_another_way() {
    Chamber chamber =
        chamber(
            List.of(reading("1/2 in", Method.STEEL_RULE)),
            List.of(reading("3/4 in", Method.PRIED_BY_HAND)));

    assertThat(found(chamber)).isEmpty();
  }

  @Test
  void a_stroke_measured_again_settles_the_contradiction() {
    Chamber chamber =
        chamber(
            List.of(
                reading("1/2 in", Method.FULL_APPLICATION),
                reading("1 1/2 in", Method.FULL_APPLICATION)),
            List.of(reading("3/4 in", Method.PRIED_BY_HAND)));

    assertThat(found(chamber)).isEmpty();
  }

  @Test
  void readings_do_not_contradict_where_their_uncertainty_lets_both_be_right() {
    Reading<Length> applied =
        reading("1/2 in", Method.FULL_APPLICATION).plusOrMinus(Length.parse("1/16 in"));
    Reading<Length> free = reading("1/2 in", Method.PRIED_BY_HAND);

    assertThat(found(chamber(List.of(applied), List.of(free)))).isEmpty();
  }

  @ParameterizedTest(name = "journal {0}, bore {1}: {2}")
  @CsvSource({
    "1.502 in, 1.501 in, JOURNAL_IN_BORE",
    "1.501 in, 1.501 in, ''",
    "1.500 in, 1.501 in, ''",
  })
  void a_journal_is_no_wider_than_its_bushing(String journal, String bore, String expected) {
    Camshaft shaft =
        Camshaft.builder(Tag.asFound(LEFT.place(PartKind.CAMSHAFT)))
            .journalDiameter(Measurement.of(reading(journal, Station.HEAD_END, Method.MICROMETER)))
            .build();
    List<Part> bushings =
        Stream.of(Station.HEAD_END, Station.SPLINE_END)
            .<Part>map(
                station ->
                    CamshaftBushing.builder(
                            Tag.asFound(LEFT.place(PartKind.CAMSHAFT_BUSHING, station)))
                        .bore(Measurement.of(reading(bore, Method.BORE_GAUGE)))
                        .build())
            .toList();

    assertThat(found(shaft, bushings.get(0), bushings.get(1)))
        .extracting(one -> one.contradiction().name() + " " + one.station().id())
        .isEqualTo(expected.isEmpty() ? List.of() : List.of(expected + " head-end"));
  }

  @Test
  void the_thinnest_point_is_held_against_the_thinnest_of_the_other_places() {
    Lining lining =
        Lining.builder(Tag.asFound(LEFT.place(PartKind.LINING, Station.UPPER)))
            .thickness(
                new Measurement<>(
                    List.of(
                        at("0.45 in", Station.THINNEST_POINT),
                        at("0.50 in", Station.SHOE_CENTRE),
                        at("0.40 in", Station.CAM_END),
                        at("0.44 in", Station.ANCHOR_END))))
            .build();

    assertThat(found(lining))
        .containsExactly(
            new ReadingsContradict(
                Contradiction.THINNEST_POINT, lining.place(), "0.45 in", "0.40 in"));
  }

  private static List<ReadingsContradict> found(Part... parts) {
    return Contradictions.of(new WheelEnd(LEFT, Layout.UNKNOWN, List.of(parts)));
  }

  private static Chamber chamber(List<Reading<Length>> applied, List<Reading<Length>> free) {
    return Chamber.builder(Tag.asFound(LEFT.place(PartKind.CHAMBER)))
        .appliedStroke(new Measurement<>(applied))
        .freeStroke(new Measurement<>(free))
        .build();
  }

  private static Reading<Length> reading(String length, Method method) {
    return reading(length, Station.WHOLE_PART, method);
  }

  private static Reading<Length> at(String length, Station station) {
    return reading(length, station, Method.CALIPER);
  }

  private static Reading<Length> reading(String length, Station station, Method method) {
    return new Reading<>(
        Length.parse(length),
        length,
        station,
        method,
        Optional.empty(),
        Optional.empty(),
        Moment.UNKNOWN);
  }
}
