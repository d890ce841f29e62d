package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.brakerules.calc.Working;
import org.brakerules.figure.Figure;
import org.brakerules.figure.JobFigures;
import org.brakerules.figure.WheelEndFigures;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.BrakeJobBuilder;
import org.brakerules.model.job.EarlierLining;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.Odometer;
import org.brakerules.model.job.ShimsAtHand;
import org.brakerules.model.job.Size;
import org.brakerules.model.job.StatedSize;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.part.ClevisPin;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Drum;
import org.brakerules.model.part.Lining;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PinSize;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Shim;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.SlackAdjuster;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.brakerules.random.Answer;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/** What is worked out of a job. */
class FiguresTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final String HEAD = LEFT + "/camshaft-bushing/head-end";

  private static final Layout TYPE_30 =
      Layout.of(CamshaftLayout.TUBE)
          .chamber(
              new ChamberSize(
                  ChamberFamily.CLAMP, "30", StrokeClass.STANDARD, length("2.5 in"), ""))
          .drumDiameter(length("16.5 in"))
          .build();

  private static final SlackAdjuster ARM =
      SlackAdjuster.asFound(LEFT)
          .armLength(at(Station.WHOLE_PART, Method.STEEL_RULE, "5.5 in"))
          .build();

  @Test
  void new_sizes_split_the_play_into_bushing_and_journal() {
    BrakeJobBuilder job =
        job(
            TYPE_30,
            Camshaft.asFound(LEFT)
                .journalDiameter(at(Station.HEAD_END, Method.MICROMETER, "1.494 in"))
                .build(),
            CamshaftBushing.asFound(LEFT, Station.HEAD_END)
                .bore(at(Station.HEAD_END, Method.BORE_GAUGE, "1.521 in"))
                .build());
    assertThat(missing(job, "radial-play.share"))
        .containsExactly(
            "bore of a new bushing, by the maker", "journal of a new camshaft, by the maker");
    job.size(size(Size.NEW_BUSHING_BORE, "1.505 in")).size(size(Size.NEW_JOURNAL, "1.498 in"));
    assertThat(results(job, "radial-play")).containsExactly(new Working.Named("play", "0.027 in"));
    assertThat(results(job, "radial-play.share"))
        .containsExactly(
            new Working.Named("play when new", "0.007 in"),
            new Working.Named("wear of the bushing", "0.016 in"),
            new Working.Named("wear of the journal", "0.004 in"));
  }

  @Test
  void what_a_figure_lacks_is_named() {
    BrakeJobBuilder job =
        job(
            Layout.UNKNOWN,
            Camshaft.asFound(LEFT)
                .endPlay(at(Station.SPLINE_END, Method.DIAL_INDICATOR, "0.042 in"))
                .build(),
            CamshaftBushing.asFound(LEFT, Station.HEAD_END)
                .bore(at(Station.HEAD_END, Method.BORE_GAUGE, "1.521 in"))
                .build(),
            Lining.asFound(LEFT, Station.UPPER)
                .thickness(at(Station.SHOE_CENTRE, Method.CALIPER, "0.25 in"))
                .build(),
            Drum.asFound(LEFT).diameter(at(Station.MIDDLE, Method.DRUM_GAUGE, "16.62 in")).build(),
            Chamber.asFound(LEFT).appliedStroke(stroke("1.75 in", Moment.AS_FOUND)).build());
    assertThat(missing(job, "end-play.shims")).containsExactly("band of the end play");
    assertThat(missing(job, "radial-play")).containsExactly("diameter of the journal at this end");
    assertThat(missing(job, "lining.evenness"))
        .containsExactly("thickness at both edges of cam end, shoe centre and anchor end");
    assertThat(missing(job, "drum.bore"))
        .containsExactly("two diameters or more at open side, middle and closed side");
    assertThat(missing(job, "stroke.power")).containsExactly("free stroke of the same moment");
    assertThat(missing(job, "stroke.reserve")).containsExactly("rated stroke of the chamber");
    assertThat(missing(job, "cam-rotation.used"))
        .containsExactly("thickness of a new lining, by the maker");
  }

  /** Prying bends the bracket into the reading, so it makes no play. */
  @Test
  void only_a_shaft_lifted_by_hand_shows_its_play_on_a_dial() {
    BrakeJobBuilder pried =
        job(
            TYPE_30,
            CamshaftBushing.asFound(LEFT, Station.HEAD_END)
                .radialPlay(at(Station.HEAD_END, Method.DIAL_INDICATOR_PRIED, "0.031 in"))
                .build());
    assertThat(missing(pried, "radial-play"))
        .containsExactly("whole movement of a dial, the shaft lifted by hand");
    BrakeJobBuilder lifted =
        job(
            TYPE_30,
            CamshaftBushing.asFound(LEFT, Station.HEAD_END)
                .radialPlay(at(Station.HEAD_END, Method.DIAL_INDICATOR_LIFTED_BY_HAND, "0.021 in"))
                .build());
    assertThat(results(lifted, "radial-play"))
        .containsExactly(new Working.Named("play", "0.021 in"));
  }

  @Test
  void play_in_four_directions_is_stated_as_sizes() {
    BrakeJobBuilder job =
        job(TYPE_30, CamshaftBushing.asFound(LEFT, Station.HEAD_END).build())
            .size(new StatedSize(Size.PLAY_UP_AND_DOWN, HEAD, Length.parse("0.018 in")))
            .size(new StatedSize(Size.PLAY_UP_IN_FRONT, HEAD, Length.parse("0.031 in")))
            .size(new StatedSize(Size.PLAY_FRONT_TO_REAR, HEAD, Length.parse("0.016 in")));
    assertThat(missing(job, "radial-play.one-sided"))
        .containsExactly("play in each of the four directions");
    job.size(new StatedSize(Size.PLAY_DOWN_IN_FRONT, HEAD, Length.parse("0.012 in")));
    assertThat(results(job, "radial-play.one-sided"))
        .containsExactly(
            new Working.Named("most play up in front, down behind, difference", "0.019 in"));
  }

  @Test
  void a_hole_that_is_stated_tells_whose_the_play_of_a_pin_is() {
    BrakeJobBuilder job =
        job(
                TYPE_30,
                ClevisPin.asFound(LEFT, Station.LARGE)
                    .size(PinSize.HALF_INCH)
                    .diameter(at(Station.LARGE, Method.MICROMETER, "0.486 in"))
                    .build())
            .size(size(Size.CLEVIS_PIN_HOLE, "0.508 in"))
            .size(size(Size.WIDEST_NEW_CLEVIS_PIN_HOLE, "0.505 in"));
    assertThat(results(job, "clevis-pin.fit"))
        .containsExactly(
            new Working.Named("clearance", "0.022 in"),
            new Working.Named("wear of the pin", "0.005 in"),
            new Working.Named("wear of the hole", "0.003 in"),
            new Working.Named("most clearance when both are new", "0.014 in"));
  }

  /** From the brief's mechanics: 1/2 in of lining and 0.060 in of drum radius are 128 degrees. */
  @Test
  void wear_of_lining_and_drum_is_rotation_of_the_cam() {
    BrakeJobBuilder job =
        job(
                TYPE_30,
                Lining.asFound(LEFT, Station.UPPER)
                    .thickness(at(Station.SHOE_CENTRE, Method.CALIPER, "0.25 in"))
                    .build(),
                Drum.asFound(LEFT)
                    .diameter(at(Station.MIDDLE, Method.DRUM_GAUGE, "16.62 in"))
                    .build())
            .size(size(Size.NEW_LINING, "0.75 in"));
    assertThat(results(job, "cam-rotation.used"))
        .contains(new Working.Named("rotation used", "about 128.3 deg"));
    assertThat(working(job, "cam-rotation.used").assumed())
        .extracting(Working.Named::name)
        .containsExactly("wear of the roller on its radius", "lift radius");
    job.size(size(Size.NEW_ROLLER, "1.625 in"))
        .size(size(Size.ROLLER, "1.605 in"))
        .size(size(Size.CAM_LIFT_RADIUS, "0.5 in"));
    assertThat(results(job, "cam-rotation.used"))
        .contains(new Working.Named("rotation used", "about 129.5 deg"));
    assertThat(working(job, "cam-rotation.used").assumed()).isEmpty();
  }

  /** Check case C15: a published reconstruction worksheet; the inputs are our own. */
  @Test
  void with_a_rolling_radius_there_is_a_wheel_force() {
    BrakeJobBuilder job = job(TYPE_30, ARM);
    assertThat(missing(job, "force.wheel")).containsExactly("rolling radius of the tyre");
    assertThat(results(job.size(size(Size.ROLLING_RADIUS, "20 in")), "force.wheel"))
        .containsExactly(new Working.Named("wheel force", "about 3430 lbf"));
  }

  /** Read at the arm a backlash is several times as large, so it is not levered up once more. */
  @Test
  void only_a_backlash_at_the_pitch_radius_is_lost_motion_of_the_spline() {
    BrakeJobBuilder job =
        job(
            TYPE_30,
            ARM,
            Camshaft.asFound(LEFT)
                .splineBacklash(at(Station.CLEVIS_HOLE, Method.DIAL_INDICATOR, "0.150 in"))
                .build());
    assertThat(figures(job)).noneMatch(one -> one.working().id().equals("lost-motion"));
  }

  @Test
  void plays_that_only_a_size_states_are_part_of_the_lost_motion() {
    BrakeJobBuilder job =
        job(TYPE_30, ARM)
            .size(size(Size.PLAY_OF_PIN_IN_ARM, "0.020 in"))
            .size(size(Size.PLAY_OF_ADJUSTER_GEAR, "0.050 in"));
    assertThat(results(job, "lost-motion"))
        .contains(new Working.Named("lost motion known so far", "about 0.07 in"))
        .contains(new Working.Named("share of the stroke limit 2 in", "about 3.5 %"));
  }

  @Test
  void shims_at_hand_bring_the_end_play_inside_its_band() {
    BrakeJobBuilder job =
        job(
                TYPE_30,
                Camshaft.asFound(LEFT)
                    .endPlay(at(Station.SPLINE_END, Method.DIAL_INDICATOR, "0.042 in"))
                    .build())
            .shimsAtHand(new ShimsAtHand(Length.parse("0.030 in"), 2, Condition.NEW));
    assertThat(results(job, "end-play.shims"))
        .contains(new Working.Named("put in", "1 x 0.03 in new"))
        .contains(new Working.Named("end play", "0.012 in"));
  }

  @Test
  void an_end_play_inside_its_band_moves_no_shim() {
    BrakeJobBuilder job =
        job(
                TYPE_30,
                Camshaft.asFound(LEFT)
                    .endPlay(at(Station.SPLINE_END, Method.DIAL_INDICATOR, "0.012 in"))
                    .build())
            .shimsAtHand(new ShimsAtHand(Length.parse("0.010 in"), 2, Condition.NEW));
    assertThat(results(job, "end-play.shims"))
        .containsExactly(
            new Working.Named("inside the band, leave the shims; end play", "0.012 in"));
  }

  @Test
  void a_shim_that_nobody_decided_on_or_of_no_thickness_is_in_no_stack() {
    assertThat(missing(withShim("0.030 in"), "end-play.shims"))
        .containsExactly("a decision on each shim fitted: look at it first");
    assertThat(missing(withShim("0 in"), "end-play.shims"))
        .containsExactly("thickness of each shim fitted");
  }

  private static BrakeJobBuilder withShim(String thickness) {
    return job(
        TYPE_30,
        Camshaft.asFound(LEFT)
            .endPlay(at(Station.SPLINE_END, Method.DIAL_INDICATOR, "0.042 in"))
            .build(),
        Shim.asFound(LEFT, Station.SPLINE_END)
            .thickness(at(Station.SPLINE_END, Method.MICROMETER, thickness))
            .build());
  }

  /** An applied stroke no longer than the free one was misread, and makes no figure. */
  @Test
  void strokes_of_one_moment_make_a_power_stroke() {
    BrakeJobBuilder job =
        job(
            TYPE_30,
            Chamber.asFound(LEFT)
                .freeStroke(free("0.5 in", Moment.AS_FOUND).and(pried("0.6 in", Moment.AFTER_WORK)))
                .appliedStroke(
                    stroke("1.75 in", Moment.AS_FOUND).and(read("0.6 in", Moment.AFTER_WORK)))
                .build());
    assertThat(figures(job))
        .filteredOn(one -> one.working().id().equals("stroke.power"))
        .extracting(one -> one.working().results() + " " + one.working().missing())
        .containsExactly(
            "[Named[name=power stroke, value=1.25 in]] []",
            "[] [applied stroke contradicts free stroke; measure both again]");
  }

  /**
   * At a lower pressure the rod comes out less far, and the reserve would look longer than it is.
   */
  @Test
  void a_stroke_at_another_pressure_than_the_law_wants_makes_no_reserve() {
    Reading<Length> tooLittle =
        Reading.of(Length.parse("1.75 in"), Station.WHOLE_PART, Method.FULL_APPLICATION)
            .taken(Moment.AS_FOUND)
            .atReservoirPressure(Pressure.parse("79 psi"));
    BrakeJobBuilder job =
        job(
            TYPE_30,
            Chamber.asFound(LEFT)
                .freeStroke(free("0.5 in", Moment.AS_FOUND))
                .appliedStroke(Measurement.of(tooLittle))
                .build());
    assertThat(figures(job)).noneMatch(one -> one.working().id().equals("stroke.reserve"));
    assertThat(missing(job, "stroke.power"))
        .containsExactly(
            "applied stroke of the same moment, fully applied at a reservoir pressure from 80 psi"
                + " to 90 psi");
  }

  @Test
  void sizes_that_cannot_both_be_right_are_to_be_measured_again() {
    BrakeJobBuilder job =
        job(
                TYPE_30,
                Camshaft.asFound(LEFT)
                    .journalDiameter(at(Station.HEAD_END, Method.MICROMETER, "1.502 in"))
                    .build(),
                CamshaftBushing.asFound(LEFT, Station.HEAD_END)
                    .bore(at(Station.HEAD_END, Method.BORE_GAUGE, "1.501 in"))
                    .build(),
                ClevisPin.asFound(LEFT, Station.LARGE)
                    .size(PinSize.HALF_INCH)
                    .diameter(at(Station.LARGE, Method.MICROMETER, "0.509 in"))
                    .build(),
                Lining.asFound(LEFT, Station.UPPER)
                    .thickness(at(Station.SHOE_CENTRE, Method.CALIPER, "0.76 in"))
                    .build())
            .size(size(Size.CLEVIS_PIN_HOLE, "0.508 in"))
            .size(size(Size.NEW_LINING, "0.75 in"));
    assertThat(missing(job, "radial-play"))
        .containsExactly("journal contradicts bore; measure both again");
    assertThat(missing(job, "clevis-pin.fit"))
        .containsExactly("pin contradicts hole; measure both again");
    assertThat(missing(job, "cam-rotation.used"))
        .containsExactly(
            "thickness of the lining contradicts that of a new one; measure both again");
  }

  /** 4 mm in 40,000 km leave 22,500 km for 2.25 mm, own arithmetic. */
  @Test
  void a_lining_measured_before_tells_how_far_it_may_still_run() {
    Working life = working(measuredBefore("12.6 mm"), "lining.life");
    assertThat(life.results()).hasSize(1);
    assertThat(life.steps().get(0)).isEqualTo("40000 km x 2.25 mm / 4 mm = 22500 km");
    assertThat(life.assumed())
        .extracting(Working.Named::name)
        .containsExactly("uncertainty of each");
  }

  @Test
  void a_lining_that_grew_contradicts_what_it_was_before() {
    assertThat(missing(measuredBefore("8 mm"), "lining.life"))
        .containsExactly("thinnest now contradicts thinnest before; measure both again");
  }

  /** A lining of 8.6 mm that was measured 40,000 km before. */
  private static BrakeJobBuilder measuredBefore(String thickness) {
    EarlierLining before =
        new EarlierLining(
            LEFT + "/lining/upper",
            LocalDate.of(2026, 3, 2),
            Length.parse(thickness),
            Odometer.parse("400000 km"),
            Odometer.parse("440000 km"));
    Lining lining =
        Lining.asFound(LEFT, Station.UPPER)
            .thickness(at(Station.THINNEST_POINT, Method.CALIPER, "8.6 mm"))
            .build();
    return BrakeJob.builder()
        .date(LocalDate.of(2026, 11, 20))
        .ruleSet("us-federal")
        .scope(Scope.CAMSHAFT_OUT)
        .axle("", 2, AxleKind.DRIVE)
        .wheelEnd(LEFT, TYPE_30, lining)
        .earlierLining(before);
  }

  @Test
  void play_of_the_small_pin_is_a_dead_band_of_a_linked_adjuster() {
    assertThat(
            results(
                job(TYPE_30, ARM).size(size(Size.PLAY_OF_SMALL_PIN, "0.030 in")),
                "adjuster.dead-band"))
        .containsExactly(new Working.Named("dead band", "about 0.03 in"));
  }

  @Test
  void shims_without_an_end_play_ask_for_it() {
    BrakeJobBuilder job =
        job(TYPE_30, Camshaft.asFound(LEFT).build())
            .shimsAtHand(new ShimsAtHand(Length.parse("0.030 in"), 2, Condition.NEW));
    assertThat(missing(job, "end-play.shims")).containsExactly("end play at the spline end");
  }

  @Test
  void a_shim_that_one_wheel_end_takes_is_not_at_hand_for_the_next() {
    Camshaft loose =
        Camshaft.asFound(LEFT)
            .endPlay(at(Station.SPLINE_END, Method.DIAL_INDICATOR, "0.062 in"))
            .build();
    Camshaft alsoLoose =
        Camshaft.asFound(LEFT.partner())
            .endPlay(at(Station.SPLINE_END, Method.DIAL_INDICATOR, "0.062 in"))
            .build();
    BrakeJobBuilder job =
        job(TYPE_30, loose)
            .wheelEnd(LEFT.partner(), TYPE_30, alsoLoose)
            .makersLimit(
                new MakersLimit(
                    "camshaft.end-play.max", "", Length.parse("0.030 in"), "Invented sheet", "1"))
            .makersLimit(
                new MakersLimit(
                    "camshaft.end-play.min", "", Length.parse("0.005 in"), "Invented sheet", "1"))
            .shimsAtHand(new ShimsAtHand(Length.parse("0.040 in"), 1, Condition.NEW));
    List<Working> shims =
        BrakeRules.standard().figures(job.build()).wheelEnds().stream()
            .flatMap(end -> end.figures().stream())
            .map(Figure::working)
            .filter(one -> one.id().equals("end-play.shims"))
            .toList();
    assertThat(shims.get(0).results()).contains(new Working.Named("put in", "1 x 0.04 in new"));
    assertThat(shims.get(1).given())
        .contains(
            new Working.Named("shims at hand", "none"),
            new Working.Named("shims at hand are those left by", LEFT.toString()));
  }

  @Test
  void figures_of_random_jobs_name_a_result_or_what_is_missing() {
    Seeds.each(
        2000,
        seed -> {
          BrakeJob job = Answer.of(seed).job();
          JobFigures figures = BrakeRules.standard().figures(job);
          assertThat(figures.wheelEnds())
              .flatExtracting(WheelEndFigures::figures)
              .extracting(Figure::working)
              .allMatch(one -> !one.results().isEmpty() || !one.missing().isEmpty());
        });
  }

  @Test
  void a_job_that_is_refused_has_no_figures() {
    BrakeJob job = job(TYPE_30, ARM).ruleSet("nowhere").build();
    assertThatThrownBy(() -> BrakeRules.standard().figures(job))
        .isInstanceOf(JobRefusedException.class);
  }

  private static List<Working.Named> results(BrakeJobBuilder job, String id) {
    return working(job, id).results();
  }

  private static List<String> missing(BrakeJobBuilder job, String id) {
    return working(job, id).missing();
  }

  private static Working working(BrakeJobBuilder job, String id) {
    return figures(job).stream()
        .map(Figure::working)
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no figure " + id + " among " + figures(job)));
  }

  private static List<Figure> figures(BrakeJobBuilder job) {
    return BrakeRules.standard().figures(job.build()).wheelEnds().get(0).figures().stream()
        .filter(one -> !one.working().id().equals("margin"))
        .filter(one -> !one.working().id().equals("force.push-rod"))
        .toList();
  }

  private static BrakeJobBuilder job(Layout layout, Part... parts) {
    return BrakeJob.builder()
        .date(LocalDate.of(2026, 11, 20))
        .ruleSet("us-federal")
        .scope(Scope.CAMSHAFT_OUT)
        .wheelEnd(LEFT, layout, parts);
  }

  private static StatedSize size(Size size, String value) {
    return new StatedSize(size, "", Length.parse(value));
  }

  private static Optional<Length> length(String value) {
    return Optional.of(Length.parse(value));
  }

  private static Measurement<Length> at(Station station, Method method, String value) {
    return Measurement.of(Length.parse(value), station, method);
  }

  private static Measurement<Length> stroke(String value, Moment moment) {
    return Measurement.of(read(value, moment));
  }

  private static Reading<Length> read(String value, Moment moment) {
    return Reading.of(Length.parse(value), Station.WHOLE_PART, Method.FULL_APPLICATION)
        .atReservoirPressure(Pressure.parse("85 psi"))
        .taken(moment);
  }

  private static Measurement<Length> free(String value, Moment moment) {
    return Measurement.of(pried(value, moment));
  }

  private static Reading<Length> pried(String value, Moment moment) {
    return Reading.of(Length.parse(value), Station.WHOLE_PART, Method.PRIED_BY_HAND).taken(moment);
  }
}
