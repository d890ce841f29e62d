package org.brakerules.calc.shim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.brakerules.calc.shim.ShimChoice.Fits;
import org.brakerules.calc.shim.ShimChoice.NothingFits;
import org.brakerules.model.part.Condition;
import org.brakerules.model.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EndPlayShimsTest {

  /** TM 5-4210-220-12: end play of the camshaft. */
  private static final EndPlayBand BAND =
      new EndPlayBand(Length.inches("0.005"), Length.inches("0.045"));

  private static final Length NONE = Length.inches("0");

  /** Values of TM 5-4210-220-12, arithmetic our own: one 0.060 in, or others in its absence. */
  @ParameterizedTest(name = "end play {0} in, at hand {1}: put in {2}, leaves {3} in")
  @CsvSource({
    "0.100, 0.030 0.060,       0.060,       0.040",
    "0.100, 0.030 0.030 0.030, 0.030 0.030, 0.040",
    "0.046, 0.030 0.060,       0.030,       0.016",
    "0.045, 0.030 0.060,       '',          0.045",
    "0.005, 0.030 0.060,       '',          0.005",
    "0.105, 0.030 0.060,       0.060,       0.045",
    "0.065, 0.060,             0.060,       0.005",
  })
  void the_fewest_shims_bring_the_end_play_inside_its_band(
      String endPlay, String atHand, String putIn, String leaves) {
    Fits fits = fits(endPlay, List.of(), fresh(atHand));
    assertThat(fits.putIn()).isEqualTo(fresh(putIn));
    assertThat(fits.endPlay()).isEqualTo(Length.inches(leaves));
    assertThat(fits.takeOut()).isEmpty();
  }

  @Test
  void too_tight_a_stack_gives_up_a_shim() {
    Fits fits = fits("0.003", salvaged("0.060 0.010"), fresh("0.030"));
    assertThat(fits.takeOut()).isEqualTo(salvaged("0.010"));
    assertThat(fits.putIn()).isEmpty();
    assertThat(fits.endPlay()).isEqualTo(Length.inches("0.013"));
  }

  /** Twelve odd thicknesses, 99 of each, in a gap no brake has: the search gives up and says so. */
  @Test
  void a_stock_too_large_to_search_is_refused_rather_than_searched_for_hours() {
    List<ShimPiece> stock = new ArrayList<>();
    for (int kind = 0; kind < 12; kind++) {
      ShimPiece piece =
          new ShimPiece(Length.parse("0.0" + (1013 + 37 * kind) + " in"), Condition.NEW);
      stock.addAll(Collections.nCopies(99, piece));
    }
    ShimPlan plan =
        EndPlayShims.choose(
            Length.inches("9.9999"),
            new EndPlayBand(Length.parse("0.00001 in"), Length.parse("0.00002 in")),
            List.of(),
            NONE,
            stock);
    assertThat(plan.choice()).isEqualTo(new ShimChoice.TooManyStacks());
    assertThat(plan.working().missing())
        .containsExactly(
            "a smaller choice: the shims at hand make too many stacks to try them all");
  }

  @Test
  void of_two_stacks_of_as_many_pieces_the_one_nearest_the_middle_wins() {
    assertThat(fits("0.085", List.of(), fresh("0.045 0.060 0.075")).putIn())
        .isEqualTo(fresh("0.060"));
  }

  @Test
  void a_salvaged_shim_goes_before_a_new_one_as_thick() {
    List<ShimPiece> atHand = new ArrayList<>(fresh("0.060"));
    atHand.addAll(salvaged("0.060"));
    assertThat(fits("0.085", List.of(), atHand).putIn()).isEqualTo(salvaged("0.060"));
  }

  @Test
  void a_discarded_shim_counts_for_the_gap_alone() {
    ShimChoice choice =
        EndPlayShims.choose(
                Length.inches("0.010"), BAND, List.of(), Length.inches("0.060"), fresh("0.060"))
            .choice();
    assertThat(((Fits) choice).putIn()).isEqualTo(fresh("0.060"));
  }

  @Test
  void where_nothing_fits_the_thickness_that_would_is_named() {
    NothingFits nothing = (NothingFits) choose("0.200", List.of(), fresh("0.060"));
    assertThat(nothing.beside()).isEqualTo(fresh("0.060"));
    assertThat(nothing.thinnest()).isEqualTo(Length.inches("0.095"));
    assertThat(nothing.thickest()).isEqualTo(Length.inches("0.135"));
  }

  @ParameterizedTest(name = "end play {0} in, at hand {1}: beside {2}")
  @CsvSource({
    "0.200, 0.060 0.150,       0.150",
    "0.300, 0.120 0.120 0.240, 0.240",
  })
  void where_nothing_fits_the_thickest_stack_below_the_band_is_kept_with_the_fewest_shims(
      String endPlay, String atHand, String beside) {
    NothingFits nothing = (NothingFits) choose(endPlay, List.of(), fresh(atHand));
    assertThat(nothing.beside()).isEqualTo(fresh(beside));
  }

  @Test
  void a_band_may_be_a_single_end_play_and_no_less() {
    Length ten = Length.inches("0.010");
    assertThat(new EndPlayBand(ten, ten).contains(ten)).isTrue();
    assertThatThrownBy(() -> new EndPlayBand(ten, Length.inches("0.009")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void an_end_play_under_its_minimum_without_shims_is_no_matter_of_shims() {
    assertThat(choose("0.004", List.of(), fresh("0.030")))
        .isEqualTo(new ShimChoice.TooTightWithoutShims(Length.inches("0.004")));
  }

  @Test
  void no_movement_is_no_measurement() {
    assertThat(choose("0", salvaged("0.030"), List.of())).isEqualTo(new ShimChoice.Bound());
  }

  @Test
  void inches_and_millimetres_give_the_same_stack() {
    List<ShimPiece> metric = List.of(new ShimPiece(Length.millimetres("1.524"), Condition.NEW));
    assertThat(fits("0.100", List.of(), metric).endPlay()).isEqualTo(Length.inches("0.040"));
  }

  @Test
  void an_end_play_below_zero_is_refused() {
    Length negative = Length.inches("0").minus(Length.inches("0.001"));
    assertThatThrownBy(() -> EndPlayShims.choose(negative, BAND, List.of(), NONE, List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("-0.001 in");
  }

  @Test
  void the_work_can_be_followed_with_a_pencil() {
    String text =
        EndPlayShims.choose(
                Length.inches("0.100"), BAND, salvaged("0.010"), NONE, fresh("0.030 0.060 0.060"))
            .working()
            .asText();
    assertThat(text)
        .isEqualTo(
            """
            Shims for the end play
              given     end play 0.1 in
              given     band 0.005 in to 0.045 in
              given     shims fitted 1 x 0.01 in used
              given     shims at hand 2 x 0.06 in new, 1 x 0.03 in new
              formula   end play = end play measured + shims taken out - shims put in
              work      0.1 in + 0.01 in - 0.09 in = 0.02 in
              result    take out 1 x 0.01 in used
              result    put in 1 x 0.06 in new, 1 x 0.03 in new
              result    end play 0.02 in
              basis     every stack of the shims at hand was tried (derived)
            """);
  }

  /** Every subset of the pieces is tried; whatever the search finds must be the first of them. */
  @Test
  void the_search_finds_what_trying_every_stack_finds() {
    Random random = new Random(20261125);
    int fitting = 0;
    for (int job = 0; job < 2000; job++) {
      List<ShimPiece> fitted = pieces(random, random.nextInt(4));
      List<ShimPiece> atHand = pieces(random, random.nextInt(8));
      Length endPlay = new Length((1 + random.nextInt(150)) * 25_400L, BAND.min().unit());
      ShimChoice found = EndPlayShims.choose(endPlay, BAND, fitted, NONE, atHand).choice();
      List<ShimPiece> all = new ArrayList<>(fitted);
      all.addAll(atHand);
      Length gap = fitted.stream().map(ShimPiece::thickness).reduce(endPlay, Length::plus);
      Optional<List<ShimPiece>> best = byTryingAll(all, gap);
      assertThat(found instanceof Fits fits ? Optional.of(fits.stack()) : Optional.empty())
          .as("gap %s, pieces %s", gap, all)
          .isEqualTo(best);
      fitting += best.isPresent() ? 1 : 0;
    }
    assertThat(fitting).isBetween(200, 1950);
  }

  private static Optional<List<ShimPiece>> byTryingAll(List<ShimPiece> pieces, Length gap) {
    List<List<ShimPiece>> inside = new ArrayList<>();
    for (int chosen = 0; chosen < 1 << pieces.size(); chosen++) {
      List<ShimPiece> stack = new ArrayList<>();
      for (int i = 0; i < pieces.size(); i++) {
        if ((chosen >> i & 1) == 1) {
          stack.add(pieces.get(i));
        }
      }
      if (BAND.contains(left(gap, stack))) {
        stack.sort(thickestThenSalvaged());
        inside.add(stack);
      }
    }
    return inside.stream().min(asTheRuleRanks(gap));
  }

  private static Comparator<List<ShimPiece>> asTheRuleRanks(Length gap) {
    Length middle = Length.inches("0.025");
    return Comparator.comparing((List<ShimPiece> stack) -> stack.size())
        .thenComparing(stack -> left(gap, stack).minus(middle).abs())
        .thenComparing(stack -> -stack.stream().filter(ShimPiece::isSalvaged).count())
        .thenComparing(
            (one, other) -> {
              for (int i = 0; i < one.size(); i++) {
                int order = thickestThenSalvaged().compare(one.get(i), other.get(i));
                if (order != 0) {
                  return order;
                }
              }
              return 0;
            });
  }

  private static Comparator<ShimPiece> thickestThenSalvaged() {
    return Comparator.comparing(ShimPiece::thickness)
        .reversed()
        .thenComparing(ShimPiece::condition);
  }

  private static Length left(Length gap, List<ShimPiece> stack) {
    return stack.stream().map(ShimPiece::thickness).reduce(gap, Length::minus);
  }

  private static List<ShimPiece> pieces(Random random, int count) {
    List<ShimPiece> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Length thickness = new Length((5 + random.nextInt(8) * 5) * 25_400L, BAND.min().unit());
      pieces.add(new ShimPiece(thickness, Condition.values()[random.nextInt(2)]));
    }
    return pieces;
  }

  private static Fits fits(String endPlay, List<ShimPiece> fitted, List<ShimPiece> atHand) {
    return (Fits) choose(endPlay, fitted, atHand);
  }

  private static ShimChoice choose(String endPlay, List<ShimPiece> fitted, List<ShimPiece> atHand) {
    return EndPlayShims.choose(Length.inches(endPlay), BAND, fitted, NONE, atHand).choice();
  }

  private static List<ShimPiece> fresh(String thicknesses) {
    return pieces(thicknesses, Condition.NEW);
  }

  private static List<ShimPiece> salvaged(String thicknesses) {
    return pieces(thicknesses, Condition.AS_FOUND);
  }

  private static List<ShimPiece> pieces(String thicknesses, Condition condition) {
    return Arrays.stream(thicknesses.split(" "))
        .filter(one -> !one.isEmpty())
        .map(one -> new ShimPiece(Length.inches(one), condition))
        .toList();
  }
}
