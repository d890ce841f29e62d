package org.brakerules.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.BrakeRules;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.BrakeJobBuilder;
import org.brakerules.model.kit.Kit;
import org.brakerules.model.kit.KitReach;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.model.layout.AnchorPins;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.LiningPieces;
import org.brakerules.model.layout.ShoeWebs;
import org.brakerules.model.part.Lining;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;

/** Which kits cover a reline of a trailer axle, and what is said of the rest. */
class KitCoverTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(1, Side.LEFT);
  private static final WheelEndPath RIGHT = LEFT.partner();

  private static final Layout TRAILER =
      Layout.of(CamshaftLayout.SPLIT)
          .webs(ShoeWebs.DOUBLE)
          .liningPieces(LiningPieces.TWO_BLOCKS)
          .anchorPins(AnchorPins.REMOVABLE)
          .build();

  private static final Map<String, Integer> HARDWARE =
      Map.of(
          "cam-roller", 2,
          "roller-clip", 2,
          "return-spring", 1,
          "shoe-retaining-spring", 2,
          "anchor-pin", 2,
          "anchor-bushing", 2,
          "anchor-pin-retainer", 2);

  @Test
  void two_sets_for_a_wheel_end_and_shoes_cover_the_axle_and_pins_are_saved() {
    AxleCover cover =
        cover(
            kit("SHOES", KitReach.WHEEL_END, "80.00", "FF", Map.of("shoe-with-lining", 2)),
            kit("HARDWARE", KitReach.WHEEL_END, "22.50", "", HARDWARE));

    assertThat(cover.kits())
        .extracting(chosen -> chosen.count() + " " + chosen.kit().id())
        .containsExactly("2 SHOES", "2 HARDWARE");
    assertThat(cover.price()).contains(new BigDecimal("205.00"));
    assertThat(cover.loose()).isEmpty();
    assertThat(cover.frictionCode()).isEqualTo("FF");
    assertThat(cover.salvage())
        .extracting(one -> one.item().id(), Counted::pieces)
        .containsExactly(tuple("return-spring-pin", 4));
    assertThat(cover.statement()).isEqualTo("No better choice is on this shelf.");
  }

  @Test
  void kit_that_brings_pins_leaves_none_to_be_saved() {
    AxleCover cover =
        cover(
            kit(
                "SHOES-AND-PINS",
                KitReach.WHEEL_END,
                "80.00",
                "FF",
                Map.of("shoe-with-lining", 2, "return-spring-pin", 2)));

    assertThat(cover.salvage()).isEmpty();
    assertThat(cover.spared())
        .extracting(one -> one.item().id(), Counted::pieces)
        .containsExactly(tuple("return-spring-pin", 4));
    assertThat(cover.leftOver()).isEmpty();
    assertThat(cover.loose()).extracting(one -> one.item().id()).contains("cam-roller");
  }

  @Test
  void quantity_that_a_kit_falls_short_of_is_named() {
    AxleCover cover =
        cover(
            kit(
                "CLIPS",
                KitReach.WHEEL_END,
                "3.00",
                "",
                Map.of("cam-roller", 2, "roller-clip", 1)));

    assertThat(cover.shortfalls())
        .extracting(
            one -> one.kitId() + " " + one.item().id() + " " + one.holds() + "/" + one.needed())
        .containsExactly("CLIPS roller-clip 1/2");
  }

  @Test
  void lining_that_stays_decides_over_the_code() {
    BrakeJob job =
        job()
            .wheelEnd(LEFT, TRAILER, fitted(Station.UPPER, "GG"), fitted(Station.LOWER, "GG"))
            .wheelEnd(
                RIGHT,
                TRAILER,
                Lining.asFound(RIGHT, Station.UPPER).build(),
                Lining.asFound(RIGHT, Station.LOWER).build())
            .build();
    AxleCover cover =
        BrakeRules.standard()
            .parts(
                job,
                shelf(
                    kit("FF", KitReach.WHEEL_END, "10.00", "FF", Map.of("shoe-with-lining", 2)),
                    kit("GG", KitReach.WHEEL_END, "99.00", "GG", Map.of("shoe-with-lining", 2)),
                    kit("ANY", KitReach.WHEEL_END, "1.00", "", Map.of("shoe-with-lining", 2))))
            .axles()
            .get(0);

    assertThat(cover.kits()).extracting(chosen -> chosen.kit().id()).containsExactly("GG");
    assertThat(cover.statement())
        .isEqualTo(
            "No better choice is on this shelf. Linings of code GG only, as that of the lining that"
                + " stays.");
  }

  @Test
  void lining_that_stays_without_a_code_is_to_be_compared() {
    BrakeJob job =
        job()
            .wheelEnd(LEFT, TRAILER, fitted(Station.UPPER, ""), fitted(Station.LOWER, ""))
            .wheelEnd(RIGHT, TRAILER, Lining.asFound(RIGHT, Station.UPPER).build())
            .build();

    assertThat(BrakeRules.standard().parts(job, shelf()).axles().get(0).statement())
        .endsWith("compare it with the new ones.");
  }

  @Test
  void linings_of_unknown_code_are_not_mixed_with_any_other() {
    AxleCover cover =
        cover(
            kit("ONE", KitReach.PIECE, "10.00", "", Map.of("shoe-with-lining", 1)),
            kit("THREE", KitReach.PIECE, "25.00", "", Map.of("shoe-with-lining", 3)));

    assertThat(cover.kits())
        .extracting(chosen -> chosen.count() + " " + chosen.kit().id())
        .containsExactly("4 ONE");
    assertThat(cover.frictionCode()).isEmpty();
  }

  @Test
  void number_that_is_to_be_confirmed_is_said() {
    assertThat(cover().countAndConfirm())
        .extracting(line -> line.item().id())
        .contains("anchor-pin-retainer");
  }

  @Test
  void kit_with_something_that_is_no_item_is_refused() {
    KitShelf shelf = shelf(kit("A", KitReach.PIECE, "1.00", "", Map.of("roler-clip", 1)));

    assertThatThrownBy(() -> BrakeRules.standard().parts(reline(), shelf))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("Kit A holds \"roler-clip\", which is no item; did you mean \"roller-clip\"?");
  }

  private static AxleCover cover(Kit... kits) {
    return BrakeRules.standard().parts(reline(), shelf(kits)).axles().get(0);
  }

  private static BrakeJob reline() {
    return job()
        .wheelEnd(
            LEFT, TRAILER, Lining.asFound(LEFT, Station.UPPER).wornToIndicator(Sign.SEEN).build())
        .build();
  }

  private static Part fitted(Station station, String code) {
    return Lining.fittedNew(LEFT, station).frictionCode(code).build();
  }

  private static BrakeJobBuilder job() {
    return BrakeJob.builder()
        .date(LocalDate.of(2026, 11, 20))
        .ruleSet("us-federal")
        .scope(Scope.SHOES_OFF);
  }

  private static KitShelf shelf(Kit... kits) {
    return new KitShelf("", Optional.of(Currency.getInstance("EUR")), List.of(kits));
  }

  private static Kit kit(
      String id, KitReach reach, String price, String code, Map<String, Integer> contents) {
    return new Kit(id, "kit " + id, reach, contents, Optional.of(new BigDecimal(price)), code);
  }
}
