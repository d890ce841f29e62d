package org.brakerules.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.BrakeJobBuilder;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.layout.AnchorPins;
import org.brakerules.model.layout.ArmKind;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Fitted;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.LayoutBuilder;
import org.brakerules.model.layout.LiningPieces;
import org.brakerules.model.layout.ShoeWebs;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.part.ClevisPin;
import org.brakerules.model.part.CotterPin;
import org.brakerules.model.part.Drum;
import org.brakerules.model.part.DustShield;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.Lining;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.PinSize;
import org.brakerules.model.part.PushRod;
import org.brakerules.model.part.ReturnSpring;
import org.brakerules.model.part.ReturnSpringPin;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.SlackAdjuster;
import org.brakerules.model.part.Spider;
import org.brakerules.model.part.SpringBrake;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands on the parts list of a wheel end and of its partner. */
class PartsListTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final WheelEndPath RIGHT = LEFT.partner();

  private static final Layout TRAILER =
      layout(CamshaftLayout.SPLIT).anchorPins(AnchorPins.REMOVABLE).build();

  private static LayoutBuilder layout(CamshaftLayout camshaft) {
    return Layout.of(camshaft)
        .camshaftHand(Hand.LEFT)
        .webs(ShoeWebs.DOUBLE)
        .liningPieces(LiningPieces.TWO_BLOCKS)
        .arm(ArmKind.LINKED)
        .adjuster(AdjusterKind.AUTOMATIC_CLUTCH);
  }

  /**
   * The sets of a wheel end that a US Army manual names: TM 9-2330-335-14&P, WP 0032: two rollers,
   * two roller clips, one return spring, two retaining springs, two anchor pins, two anchor
   * bushings.
   */
  @ParameterizedTest
  @CsvSource({
    "cam-roller, 2",
    "roller-clip, 2",
    "return-spring, 1",
    "shoe-retaining-spring, 2",
    "anchor-pin, 2",
    "anchor-bushing, 2"
  })
  void reline_of_a_trailer_brake_orders_the_quantities_that_the_army_manual_names(
      String item, int pieces) {
    PartsLine line = line(relined(TRAILER), LEFT, item);

    assertThat(line.handling()).isEqualTo(Handling.ORDER);
    assertThat(line.amount()).isEqualTo(new Amount(pieces, List.of()));
  }

  @Test
  void reline_orders_shoes_with_lining_and_says_which_pieces_of_lining_come_with_them() {
    PartsList list = relined(TRAILER);

    assertThat(line(list, LEFT, "shoe-with-lining").amount()).isEqualTo(new Amount(2, List.of()));
    PartsLine blocks = line(list, LEFT, "lining-block");
    assertThat(blocks.amount()).isEqualTo(new Amount(4, List.of()));
    assertThat(blocks.comesWith()).map(Item::id).contains("shoe-with-lining");
    assertThat(list.wheelEnds()).allMatch(WheelEndParts::reline);
  }

  @Test
  void where_the_shoes_are_not_known_to_have_strip_or_blocks_no_number_is_guessed() {
    Layout unknown = LayoutBuilder.builder(TRAILER).liningPieces(LiningPieces.UNKNOWN).build();

    PartsLine line = line(relined(unknown), LEFT, "lining");

    assertThat(line.amount())
        .isEqualTo(new Amount(0, List.of("depends on layout.liningPieces, not stated")));
    assertThat(line.amount().inWords()).isEqualTo("count and confirm");
  }

  @Test
  void anchor_pins_that_may_be_fixed_are_to_be_counted_and_fixed_ones_are_not_ordered() {
    Layout unknown = LayoutBuilder.builder(TRAILER).anchorPins(AnchorPins.UNKNOWN).build();
    Layout fixed = LayoutBuilder.builder(TRAILER).anchorPins(AnchorPins.FIXED).build();

    assertThat(line(relined(unknown), LEFT, "anchor-pin").amount().confirm())
        .contains("depends on layout.anchorPins, not stated");
    assertThat(line(relined(unknown), LEFT, "anchor-pin").amount().pieces()).isZero();
    assertThat(line(relined(fixed), LEFT, "anchor-pin").handling()).isEqualTo(Handling.INSPECT);
    assertThat(lines(relined(fixed), LEFT, "anchor-bushing")).isEmpty();
  }

  @Test
  void retaining_springs_of_a_drive_axle_are_two_to_be_confirmed_and_of_a_single_web_open() {
    Layout drive = layout(CamshaftLayout.TUBE).build();
    Layout single = layout(CamshaftLayout.TUBE).webs(ShoeWebs.SINGLE).build();

    assertThat(line(relined(drive), LEFT, "shoe-retaining-spring").amount().inWords())
        .isEqualTo("2, count and confirm");
    assertThat(line(relined(single), LEFT, "shoe-retaining-spring").amount())
        .isEqualTo(new Amount(0, List.of("one or two by the brake")));
  }

  @Test
  void small_steer_brake_has_one_or_two_retaining_springs_and_its_size_must_be_stated() {
    LayoutBuilder steer = layout(CamshaftLayout.TUBE).anchorPins(AnchorPins.REMOVABLE);
    Layout small = steer.drumDiameter(Optional.of(Length.parse("381 mm"))).build();
    Layout large = steer.drumDiameter(Optional.of(Length.parse("16.5 in"))).build();
    Layout unknown = steer.drumDiameter(Optional.empty()).build();

    assertThat(springs(small))
        .isEqualTo(new Amount(0, List.of("small steer brakes have one or two")));
    assertThat(springs(large))
        .isEqualTo(new Amount(2, List.of("shoes with closed eyes have none")));
    assertThat(springs(unknown).pieces()).isZero();
    assertThat(springs(unknown).confirm()).contains("depends on layout.drumDiameter, not stated");
  }

  private static Amount springs(Layout layout) {
    BrakeJob job = job().axle("", 2, AxleKind.STEER).wheelEnd(LEFT, layout, thin()).build();
    return line(BrakeRules.standard().parts(job), LEFT, "shoe-retaining-spring").amount();
  }

  @Test
  void return_spring_pins_are_saved_from_the_worn_shoes_unless_they_are_replaced_themselves() {
    PartsList saved = relined(TRAILER);
    PartsList stuck =
        list(
            TRAILER, thin(), ReturnSpringPin.asFound(LEFT, Station.UPPER).stuck(Sign.SEEN).build());

    assertThat(line(saved, LEFT, "return-spring-pin").handling()).isEqualTo(Handling.SALVAGE);
    assertThat(line(saved, LEFT, "return-spring-pin").amount().pieces()).isEqualTo(2);
    assertThat(lines(stuck, LEFT, "return-spring-pin"))
        .extracting(PartsLine::handling, line -> line.amount().pieces())
        .containsExactly(tuple(Handling.ORDER, 1), tuple(Handling.SALVAGE, 1));
  }

  @Test
  void chamber_to_be_replaced_takes_nuts_washers_and_a_jam_nut_and_says_what_must_match() {
    Layout layout =
        layout(CamshaftLayout.TUBE)
            .chamber(
                new ChamberSize(
                    ChamberFamily.CLAMP,
                    "30",
                    StrokeClass.LONG,
                    Optional.of(Length.parse("3 in")),
                    ""))
            .build();
    PartsList list =
        list(layout, Chamber.builder(Tag.missing(LEFT.place(PartKind.CHAMBER))).build());

    assertThat(line(list, LEFT, "chamber").match())
        .extracting(detail -> detail.name() + ": " + detail.value())
        .containsExactly(
            "family: clamp",
            "type: 30",
            "stroke class: long",
            "rated stroke: 3 in",
            "across the axle: must match");
    assertThat(line(list, LEFT, "chamber-mounting-nut").amount().inWords())
        .isEqualTo("2, count and confirm");
    assertThat(line(list, LEFT, "chamber-mounting-washer").amount().pieces()).isEqualTo(2);
    assertThat(line(list, LEFT, "jam-nut").amount()).isEqualTo(new Amount(1, List.of()));
    assertThat(line(list, LEFT, "jam-nut").grounds())
        .extracting(Ground::id)
        .contains("quantity.chamber.jam-nut", "CHAMBER-270");
  }

  @Test
  void a_new_chamber_brings_its_rod_and_its_spring_brake_whatever_was_decided_on_them() {
    PartsList list =
        list(
            layout(CamshaftLayout.TUBE).springBrake(Fitted.YES).build(),
            Chamber.asFound(LEFT).leak(Sign.SEEN).build());

    assertThat(line(list, LEFT, "push-rod").comesWith()).map(Item::id).contains("chamber");
    assertThat(line(list, LEFT, "spring-brake").comesWith()).map(Item::id).contains("chamber");
    assertThat(list.comingAsOneUnit())
        .containsExactlyInAnyOrder(
            LEFT.place(PartKind.PUSH_ROD), LEFT.place(PartKind.SPRING_BRAKE));
    assertThat(list.renewedBesideAnother()).contains(LEFT.place(PartKind.JAM_NUT));
  }

  @Test
  void a_bent_rod_comes_with_a_new_chamber_and_is_not_bought_apart() {
    PartsList list =
        list(
            layout(CamshaftLayout.TUBE).springBrake(Fitted.NO).build(),
            Chamber.asFound(LEFT).leak(Sign.SEEN).build(),
            PushRod.asFound(LEFT).bent(Sign.SEEN).build());

    assertThat(line(list, LEFT, "push-rod").comesWith()).map(Item::id).contains("chamber");
  }

  @Test
  void a_rod_that_is_bent_is_bought_for_itself() {
    PartsList list =
        list(
            layout(CamshaftLayout.TUBE).springBrake(Fitted.NO).build(),
            PushRod.asFound(LEFT).bent(Sign.SEEN).build());

    assertThat(line(list, LEFT, "push-rod").comesWith()).isEmpty();
  }

  @Test
  void damaged_spring_brake_goes_as_a_whole_unit() {
    PartsList list =
        list(
            layout(CamshaftLayout.TUBE).springBrake(Fitted.YES).build(),
            SpringBrake.builder(Tag.missing(LEFT.place(PartKind.SPRING_BRAKE))).build());

    assertThat(line(list, LEFT, "chamber").handling()).isEqualTo(Handling.ORDER);
    assertThat(line(list, LEFT, "spring-brake").comesWith()).map(Item::id).contains("chamber");
  }

  /** The cotter pins that ASME B18.8.1-1994 recommends for the sizes of clevis pins. */
  @ParameterizedTest
  @CsvSource({
    "QUARTER_INCH, small, 1/16 in",
    "HALF_INCH, large, 1/8 in",
    "FIVE_EIGHTHS_INCH, large, 1/8 in"
  })
  void cotter_pin_has_the_size_that_the_standard_recommends_for_its_clevis_pin(
      PinSize size, String station, String cotter) {
    Station at = Station.byId(station).orElseThrow();
    PartsList list =
        list(
            TRAILER,
            ClevisPin.asFound(LEFT, at).size(size).build(),
            CotterPin.asFound(LEFT, at).broken(Sign.SEEN).build());

    assertThat(line(list, LEFT, "cotter-pin-" + station).match())
        .containsExactly(new Detail("size by ASME B18.8.1", cotter));
  }

  @Test
  void worn_clevis_pin_takes_a_new_cotter_pin_of_its_own() {
    PartsList list =
        list(TRAILER, ClevisPin.asFound(LEFT, Station.SMALL).stepped(Sign.SEEN).build());

    assertThat(line(list, LEFT, "clevis-pin-small").handling()).isEqualTo(Handling.ORDER);
    assertThat(line(list, LEFT, "cotter-pin-small").amount()).isEqualTo(new Amount(1, List.of()));
  }

  @Test
  void manual_adjuster_gives_way_to_an_automatic_one_with_what_belongs_to_it() {
    Layout manual =
        layout(CamshaftLayout.TUBE).adjuster(AdjusterKind.MANUAL).arm(ArmKind.NONE).build();
    PartsList list =
        BrakeRules.standard()
            .parts(
                job()
                    .builtOn("", LocalDate.of(2019, 3, 1))
                    .wheelEnd(LEFT, manual, SlackAdjuster.asFound(LEFT).build())
                    .build());

    for (WheelEndPath end : List.of(LEFT, RIGHT)) {
      assertThat(details(line(list, end, "slack-adjuster")))
          .containsExactly(
              "kind: automatic", "arm: the maker's, find out", "across the axle: must match");
      for (String item :
          List.of("clevis", "adjuster-link", "clevis-pin-small", "cotter-pin-small")) {
        assertThat(line(list, end, item).handling()).as(item).isEqualTo(Handling.ORDER);
        assertThat(line(list, end, item).amount().inWords()).isEqualTo("1, count and confirm");
      }
      assertThat(line(list, end, "clevis-pin-large").handling()).isNotEqualTo(Handling.ORDER);
      assertThat(line(list, end, "adjuster-link").amount().confirm())
          .contains("a linked automatic adjuster has a link to the clevis");
    }
  }

  @Test
  void automatic_adjuster_that_is_replaced_by_its_like_takes_no_link() {
    PartsList list = list(TRAILER, SlackAdjuster.asFound(LEFT).armBushingWorn(Sign.SEEN).build());

    assertThat(details(line(list, LEFT, "slack-adjuster")))
        .contains("kind: automatic clutch", "arm: linked");
    assertThat(lines(list, LEFT, "adjuster-link")).isEmpty();
  }

  @Test
  void size_or_length_that_was_rejected_is_not_ordered_again_at_either_end() {
    Layout layout =
        layout(CamshaftLayout.TUBE)
            .chamber(
                new ChamberSize(
                    ChamberFamily.CLAMP,
                    "30",
                    StrokeClass.LONG,
                    Optional.of(Length.parse("3 in")),
                    ""))
            .build();
    PartsList size = list(layout, Chamber.asFound(LEFT).sizeUnlikePartner(Sign.SEEN).build());

    for (WheelEndPath end : List.of(LEFT, RIGHT)) {
      assertThat(details(line(size, end, "chamber")))
          .as("%s", end)
          .containsExactly(
              "family: the maker's, find out",
              "type: the maker's, find out",
              "stroke class: long",
              "rated stroke: the maker's, find out",
              "across the axle: must match");
    }
    assertThat(
            details(
                line(
                    list(
                        TRAILER,
                        SlackAdjuster.asFound(LEFT).lengthUnlikePartner(Sign.SEEN).build()),
                    LEFT,
                    "slack-adjuster")))
        .containsExactly(
            "kind: automatic clutch",
            "arm: linked",
            "arm length: the maker's, find out",
            "across the axle: must match");
  }

  private static List<String> details(PartsLine line) {
    return line.match().stream().map(one -> one.name() + ": " + one.value()).toList();
  }

  @Test
  void spider_bolts_are_never_guessed() {
    PartsList list = list(TRAILER, Spider.asFound(LEFT).cracked(Sign.SEEN).build());

    assertThat(line(list, LEFT, "spider-bolt").amount())
        .isEqualTo(new Amount(0, List.of("none where the spider is welded on, else 4 to 16")));
  }

  @Test
  void partner_that_is_not_in_the_job_gets_the_axle_set_and_everything_else_is_looked_at() {
    PartsList list = relined(TRAILER);
    WheelEndParts partner = end(list, RIGHT);

    assertThat(partner.inspected()).isFalse();
    assertThat(line(list, RIGHT, "shoe-with-lining").handling()).isEqualTo(Handling.ORDER);
    assertThat(line(list, RIGHT, "lining-block").grounds())
        .extracting(Ground::kind, Ground::id)
        .contains(tuple(Ground.Kind.AXLE_SET, "axle-set.lining"));
    assertThat(line(list, RIGHT, "cam-roller").amount().pieces()).isEqualTo(2);
    assertThat(line(list, RIGHT, "cam-roller").amount().confirm())
        .containsExactly(
            "its wheel end was not inspected, and is taken to be built as the one across the axle");
    assertThat(line(list, RIGHT, "drum").handling()).isEqualTo(Handling.INSPECT);
    assertThat(line(list, RIGHT, "chamber").handling()).isEqualTo(Handling.INSPECT);
  }

  @Test
  void what_the_work_asks_of_the_end_that_is_not_in_the_job_is_said_in_a_line() {
    OtherEnd other = relined(TRAILER).otherEnds().get(0);

    assertThat(other.wheelEnd()).isEqualTo(RIGHT);
    assertThat(other.renewed()).contains(PartKind.LINING).doesNotContain(PartKind.CAM_ROLLER);
    assertThat(other.inWords())
        .startsWith(RIGHT + ", the other end of the axle, is not in this job. New there too:")
        .contains("lining")
        .endsWith(" without its steps and checks the vehicle is not released.");
    assertThat(
            list(TRAILER, Drum.asFound(LEFT).outsideCrack(Sign.SEEN).build())
                .otherEnds()
                .get(0)
                .inWords())
        .contains("See there whether it is new too, or like the new one: drum.")
        .doesNotContain("New there too");
    assertThat(list(TRAILER, DustShield.asFound(LEFT).bent(Sign.SEEN).build()).otherEnds())
        .isEmpty();
  }

  @Test
  void partner_of_a_drum_to_be_replaced_is_measured_and_not_ordered() {
    PartsList list = list(TRAILER, Drum.asFound(LEFT).outsideCrack(Sign.SEEN).build());

    assertThat(line(list, LEFT, "drum").handling()).isEqualTo(Handling.ORDER);
    assertThat(line(list, RIGHT, "drum").handling()).isEqualTo(Handling.INSPECT);
    assertThat(line(list, RIGHT, "drum").grounds())
        .extracting(Ground::id)
        .contains("axle-set.drum");
  }

  @Test
  void dust_shield_that_goes_back_without_its_plugs_has_them_ordered() {
    Part bare =
        DustShield.asFound(LEFT)
            .bent(Sign.NOT_SEEN)
            .loose(Sign.NOT_SEEN)
            .touching(Sign.NOT_SEEN)
            .plugsMissing(Sign.SEEN)
            .build();
    PartsLine plugs = line(list(TRAILER, bare), LEFT, "dust-shield-plug");

    assertThat(plugs.handling()).isEqualTo(Handling.ORDER);
    assertThat(plugs.amount().isCertain()).isFalse();
    assertThat(plugs.grounds().get(0).sentence())
        .isEqualTo("It is needed for the repair of the dust shield.");
    assertThat(line(list(TRAILER, bare), LEFT, "dust-shield").handling()).isEqualTo(Handling.KEEP);
  }

  @Test
  void broken_return_spring_takes_the_one_across_the_axle() {
    PartsList list = list(TRAILER, ReturnSpring.asFound(LEFT).broken(Sign.SEEN).build());

    assertThat(line(list, RIGHT, "return-spring").grounds())
        .extracting(Ground::id)
        .containsExactly("axle-set.return-spring");
    assertThat(end(list, LEFT).reline()).isFalse();
  }

  @Test
  void new_linings_stay_and_those_across_the_axle_must_have_their_code() {
    BrakeJob job =
        job()
            .wheelEnd(
                LEFT,
                TRAILER,
                Lining.fittedNew(LEFT, Station.UPPER).frictionCode("FF").build(),
                Lining.fittedNew(LEFT, Station.LOWER).frictionCode("FF").build())
            .wheelEnd(
                RIGHT,
                TRAILER,
                Lining.asFound(RIGHT, Station.UPPER).build(),
                Lining.asFound(RIGHT, Station.LOWER).build())
            .build();
    PartsList list = BrakeRules.standard().parts(job);

    assertThat(line(list, RIGHT, "shoe-with-lining").match())
        .contains(new Detail("friction code", "FF"));
    assertThat(end(list, LEFT).reline()).isFalse();
  }

  @Test
  void totals_of_axle_and_vehicle_are_the_sums_of_the_wheel_ends() {
    PartsList list = relined(TRAILER);

    assertThat(list.axles()).hasSize(1);
    assertThat(list.axles().get(0).name()).isEqualTo("axle2");
    assertThat(list.vehicle())
        .filteredOn(total -> total.item().id().equals("cam-roller"))
        .singleElement()
        .satisfies(
            total -> {
              assertThat(total.amount().pieces()).isEqualTo(4);
              assertThat(total.wheelEnds()).containsExactly(LEFT, RIGHT);
            });
  }

  private static PartsList relined(Layout layout) {
    return list(layout, thin());
  }

  private static Part thin() {
    return Lining.asFound(LEFT, Station.UPPER).wornToIndicator(Sign.SEEN).build();
  }

  private static PartsList list(Layout layout, Part... parts) {
    return BrakeRules.standard().parts(job().wheelEnd(LEFT, layout, parts).build());
  }

  private static BrakeJobBuilder job() {
    return BrakeJob.builder()
        .date(LocalDate.of(2026, 11, 20))
        .ruleSet("us-federal")
        .scope(Scope.SHOES_OFF)
        .axle("", 2, AxleKind.TRAILER);
  }

  private static WheelEndParts end(PartsList list, WheelEndPath path) {
    return list.wheelEnds().stream()
        .filter(end -> end.wheelEnd().equals(path))
        .findFirst()
        .orElseThrow();
  }

  private static Stream<PartsLine> lines(PartsList list, WheelEndPath path, String item) {
    return end(list, path).lines().stream().filter(line -> line.item().id().equals(item));
  }

  private static PartsLine line(PartsList list, WheelEndPath path, String item) {
    List<PartsLine> lines = lines(list, path, item).toList();
    assertThat(lines).as(item + " of " + path).hasSize(1);
    return lines.get(0);
  }
}
