package org.brakerules.calc.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which kits are the best choice; random instances are held against every possible choice. */
class KitSearchTest {

  @Test
  void one_kit_for_the_axle_is_taken_when_it_costs_less_than_two_for_a_wheel() {
    KitChoice choice =
        KitSearch.best(
            need(Map.of("roller", 4, "clip", 4)),
            List.of(
                kit("WHEEL", "30.00", Map.of("roller", 2, "clip", 2)),
                kit("AXLE", "59.99", Map.of("roller", 4, "clip", 4))));

    assertThat(choice.counts()).containsExactly(Map.entry("AXLE", 1));
    assertThat(choice.goodness()).isEqualTo(new Goodness(0, 0, new BigDecimal("59.99"), 1, 0));
    assertThat(choice.exact()).isTrue();
  }

  @Test
  void at_one_price_fewer_kits_win_and_then_fewer_pieces_left_over() {
    List<KitOffer> offers =
        List.of(
            kit("WHEEL", "30.00", Map.of("roller", 2)),
            kit("AXLE-AND-MORE", "60.00", Map.of("roller", 4, "felt", 2)),
            kit("AXLE", "60.00", Map.of("roller", 4)));

    assertThat(KitSearch.best(need(Map.of("roller", 4)), offers).counts())
        .containsExactly(Map.entry("AXLE", 1));
  }

  @Test
  void of_two_choices_alike_in_everything_the_kit_offered_first_is_taken() {
    List<KitOffer> offers =
        List.of(kit("B", "5", Map.of("clip", 1)), kit("A", "5.00", Map.of("clip", 1)));

    assertThat(KitSearch.best(need(Map.of("clip", 3)), offers).counts())
        .containsExactly(Map.entry("B", 3));
  }

  @Test
  void what_no_kit_brings_is_loose() {
    KitChoice choice =
        KitSearch.best(
            need(Map.of("clip", 3, "drum", 2)), List.of(kit("A", "5", Map.of("clip", 2))));

    assertThat(choice.loose()).containsExactly(Map.entry("drum", 2));
    assertThat(choice.leftOver()).containsExactly(Map.entry("clip", 1));
  }

  @Test
  void codes_are_never_mixed_even_where_mixing_costs_less() {
    KitNeed need = need(Map.of("shoe", 4, "block", 1));
    List<KitOffer> offers =
        List.of(
            coded("SHOES-FF", "10", "FF", Map.of("shoe", 4)),
            coded("SHOES-GG", "12", "GG", Map.of("shoe", 4)),
            coded("BLOCK-GG", "1", "GG", Map.of("block", 1)),
            coded("BLOCK-FF", "9", "FF", Map.of("block", 1)));

    KitChoice choice = KitSearch.best(need, offers);

    assertThat(choice.counts()).containsOnlyKeys("SHOES-GG", "BLOCK-GG");
    assertThat(choice.code()).isEqualTo("GG");
  }

  @Test
  void a_code_that_must_be_matched_shuts_out_all_others() {
    KitNeed need = new KitNeed(Map.of("shoe", 4), Map.of(), Optional.of("GG"));
    List<KitOffer> offers = List.of(coded("SHOES-FF", "10", "FF", Map.of("shoe", 4)));

    assertThat(KitSearch.best(need, offers).loose()).containsExactly(Map.entry("shoe", 4));
  }

  @Test
  void pieces_that_are_only_welcome_are_not_bought_for_themselves_and_are_no_left_over() {
    KitNeed need = new KitNeed(Map.of("shoe", 2), Map.of("pin", 2), Optional.empty());
    List<KitOffer> offers =
        List.of(
            kit("PINS", "1", Map.of("pin", 2)),
            kit("SHOES", "50", Map.of("shoe", 2)),
            kit("SHOES-AND-PINS", "50", Map.of("shoe", 2, "pin", 3)));

    KitChoice bare = KitSearch.best(need, offers.subList(0, 2));
    KitChoice full = KitSearch.best(need, List.of(offers.get(0), offers.get(2)));

    assertThat(bare.counts()).containsOnlyKeys("SHOES");
    assertThat(full.welcomed()).containsExactly(Map.entry("pin", 2));
    assertThat(full.leftOver()).containsExactly(Map.entry("pin", 1));
  }

  @Test
  void twelve_kinds_of_kit_are_searched_to_the_end_and_thirteen_are_not() {
    Map<String, Integer> need = new HashMap<>();
    IntStream.range(0, 13).forEach(i -> need.put("item" + i, 4));
    List<KitOffer> singles =
        IntStream.range(0, 13).mapToObj(i -> kit("K" + i, "2", Map.of("item" + i, 1))).toList();

    KitChoice twelve = KitSearch.best(need(need), singles.subList(0, 12));
    KitChoice thirteen = KitSearch.best(need(need), singles);

    assertThat(twelve.exact()).isTrue();
    assertThat(twelve.goodness().kits()).isEqualTo(48);
    assertThat(thirteen.exact()).isFalse();
    assertThat(thirteen.loose()).isEmpty();
  }

  @Test
  void random_instances_are_answered_as_trying_every_choice_answers_them() {
    for (int seed = 0; seed < 1_500; seed++) {
      RandomShelf shelf = new RandomShelf(new Random(seed), 5);
      KitChoice choice = KitSearch.best(shelf.need, shelf.offers);
      assertThat(choice.exact()).as("seed %s", seed).isTrue();
      assertThat(choice.goodness())
          .as("seed %s: %s from %s", seed, shelf.need, shelf.offers)
          .isEqualByComparingTo(EveryChoice.best(shelf.need, shelf.offers));
    }
  }

  @Test
  void a_choice_of_many_kinds_of_kit_never_mixes_codes_and_leaves_loose_what_nothing_brings_only() {
    for (int seed = 0; seed < 200; seed++) {
      RandomShelf shelf = new RandomShelf(new Random(seed), 30);
      KitChoice choice = KitSearch.best(shelf.need, shelf.offers);
      List<KitOffer> taken =
          shelf.offers.stream().filter(one -> choice.counts().containsKey(one.id())).toList();
      assertThat(taken.stream().map(KitOffer::code).filter(code -> !code.isEmpty()).distinct())
          .as("seed %s", seed)
          .hasSizeLessThanOrEqualTo(1);
      shelf.need.required().forEach((item, count) -> assertCovered(choice, taken, item, count));
    }
  }

  private static void assertCovered(
      KitChoice choice, List<KitOffer> taken, String item, int count) {
    int brought =
        taken.stream().mapToInt(kit -> choice.counts().get(kit.id()) * kit.of(item)).sum();
    int loose = choice.loose().getOrDefault(item, 0);
    assertThat(loose).as(item).isEqualTo(Math.max(0, count - brought));
  }

  private static KitNeed need(Map<String, Integer> required) {
    return new KitNeed(required, Map.of(), Optional.empty());
  }

  private static KitOffer kit(String id, String price, Map<String, Integer> contents) {
    return coded(id, price, "", contents);
  }

  private static KitOffer coded(
      String id, String price, String code, Map<String, Integer> contents) {
    return new KitOffer(id, contents, Optional.of(new BigDecimal(price)), code);
  }

  /** A need and kits that are often alike, so that ties and codes come up. */
  private static final class RandomShelf {

    final KitNeed need;
    final List<KitOffer> offers = new ArrayList<>();

    RandomShelf(Random random, int mostKits) {
      Map<String, Integer> required = new HashMap<>();
      for (int i = random.nextInt(4); i >= 0; i--) {
        required.put("item" + i, random.nextInt(5));
      }
      Map<String, Integer> welcome = random.nextBoolean() ? Map.of("pin", 2) : Map.of();
      need =
          new KitNeed(
              required, welcome, random.nextInt(4) == 0 ? Optional.of("FF") : Optional.empty());
      for (int i = random.nextInt(mostKits + 1); i > 0; i--) {
        offers.add(offer("K" + i, random));
      }
    }

    private static KitOffer offer(String id, Random random) {
      Map<String, Integer> contents = new HashMap<>();
      for (int i = random.nextInt(3); i >= 0; i--) {
        String item = random.nextInt(6) == 0 ? "pin" : "item" + random.nextInt(5);
        contents.merge(item, 1 + random.nextInt(3), Integer::sum);
      }
      Optional<BigDecimal> price =
          random.nextInt(4) == 0
              ? Optional.empty()
              : Optional.of(BigDecimal.valueOf(random.nextInt(12) * 25L, 2));
      return new KitOffer(id, contents, price, List.of("", "", "FF", "GG").get(random.nextInt(4)));
    }
  }
}
