package org.brakerules.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.BrakeRules;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.kit.Kit;
import org.brakerules.model.kit.KitReach;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.model.part.Place;
import org.brakerules.random.Answer;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/** What holds of every parts list, on random jobs and random shelves. */
class PartsPropertiesTest {

  private static final BrakeRules RULES = BrakeRules.standard();
  private static final List<Item> ITEMS = RULES.items();
  private static final Set<Ground.Kind> REASONS_TO_ORDER =
      EnumSet.of(
          Ground.Kind.DECISION,
          Ground.Kind.MINIMUM_SET,
          Ground.Kind.AXLE_SET,
          Ground.Kind.USED_ONCE);

  @Test
  void every_replaced_part_is_ordered_and_every_decided_part_is_on_the_list_once() {
    Seeds.each(
        250,
        seed -> {
          Answer answer = Answer.of(seed);
          Map<Place, List<PartsLine>> lines = byPlace(RULES.parts(answer.job()));
          for (Decision decision : answer.decision().decisions()) {
            List<PartsLine> own =
                lines.getOrDefault(decision.part(), List.of()).stream()
                    .filter(line -> line.item().part().equals(Optional.of(decision.part().kind())))
                    .toList();
            assertThat(own).as("%s", decision.part()).hasSize(1);
            if (decision.disposition() == Disposition.REPLACE) {
              assertThat(own.get(0).handling()).isEqualTo(Handling.ORDER);
            }
          }
        });
  }

  @Test
  void nothing_is_ordered_without_a_decision_an_axle_set_or_a_minimum_set() {
    Seeds.each(
        250,
        seed ->
            assertThat(lines(RULES.parts(Answer.of(seed).job())))
                .filteredOn(line -> line.handling() == Handling.ORDER)
                .allSatisfy(
                    line ->
                        assertThat(line.grounds())
                            .as("%s", line)
                            .anyMatch(ground -> REASONS_TO_ORDER.contains(ground.kind()))));
  }

  @Test
  void every_line_has_a_reason_and_says_why_its_number_is_open() {
    Seeds.each(
        250,
        seed ->
            assertThat(lines(RULES.parts(Answer.of(seed).job())))
                .allSatisfy(
                    line -> {
                      assertThat(line.grounds()).as("%s", line).isNotEmpty();
                      assertThat(line.places()).as("%s", line).isNotEmpty();
                      assertThat(line.amount().pieces() > 0 || !line.amount().isCertain())
                          .as("%s", line)
                          .isTrue();
                    }));
  }

  @Test
  void totals_are_the_sums_of_the_wheel_ends() {
    Seeds.each(
        250,
        seed -> {
          PartsList list = RULES.parts(Answer.of(seed).job());
          Map<String, Integer> ends = new HashMap<>();
          lines(list)
              .forEach(
                  line ->
                      ends.merge(
                          key(line.item(), line.handling()), line.amount().pieces(), Integer::sum));
          assertThat(totals(list.vehicle())).isEqualTo(ends);
          assertThat(totals(list.axles().stream().flatMap(axle -> axle.lines().stream()).toList()))
              .isEqualTo(ends);
        });
  }

  @Test
  void the_same_job_and_shelf_give_the_same_list_to_the_byte() {
    Seeds.each(
        50,
        seed -> {
          KitShelf shelf = shelf(new Random(seed));
          assertThat(PartsListWriter.write(RULES.parts(Answer.of(seed).job(), shelf)))
              .isEqualTo(PartsListWriter.write(RULES.parts(Answer.of(seed).job(), shelf)));
        });
  }

  @Test
  void what_is_to_be_ordered_is_covered_or_said_to_be_loose_and_no_axle_mixes_codes() {
    Seeds.each(
        250,
        seed -> {
          KitCover cover = RULES.parts(Answer.of(seed).job(), shelf(new Random(seed)));
          Map<String, AxleCover> covers =
              cover.axles().stream().collect(Collectors.toMap(AxleCover::name, axle -> axle));
          for (AxleParts axle : cover.parts().axles()) {
            Map<String, Integer> need = bought(axle);
            if (covers.containsKey(axle.name())) {
              AxleCover covered = covers.get(axle.name());
              assertThat(sum(covered.covered(), covered.loose())).isEqualTo(need);
              assertBrought(covered, axle);
              assertOneCode(covered);
            } else {
              assertThat(need).as(axle.name()).isEmpty();
            }
          }
        });
  }

  /** Kits bring what is covered, what is left over, and pins that need not be saved. */
  private static void assertBrought(AxleCover cover, AxleParts axle) {
    Map<String, Integer> brought = new HashMap<>();
    for (ChosenKit chosen : cover.kits()) {
      chosen
          .kit()
          .contents()
          .forEach((item, each) -> brought.merge(item, each * chosen.count(), Integer::sum));
    }
    Map<String, Integer> used = sum(cover.covered(), cover.leftOver());
    axle.lines().stream()
        .filter(line -> line.handling() == Handling.SALVAGE)
        .forEach(line -> used.merge(line.item().id(), line.amount().pieces(), Integer::sum));
    cover.salvage().forEach(one -> used.merge(one.item().id(), -one.pieces(), Integer::sum));
    used.values().removeIf(count -> count == 0);
    assertThat(used).isEqualTo(brought);
  }

  /** A lining whose code is not stated may have any, so it is alike with those of its kit only. */
  private static void assertOneCode(AxleCover cover) {
    assertThat(
            cover.kits().stream()
                .map(ChosenKit::kit)
                .filter(PartsPropertiesTest::hasLining)
                .map(kit -> kit.frictionCode().isEmpty() ? kit.id() : kit.frictionCode())
                .distinct())
        .hasSizeLessThanOrEqualTo(1);
  }

  private static boolean hasLining(Kit kit) {
    return ITEMS.stream()
        .filter(Item::withLining)
        .anyMatch(item -> kit.contents().containsKey(item.id()));
  }

  private static Map<String, Integer> bought(AxleParts axle) {
    Map<String, Integer> need = new HashMap<>();
    axle.lines().stream()
        .filter(line -> line.handling() == Handling.ORDER && line.comesWith().isEmpty())
        .filter(line -> line.amount().pieces() > 0)
        .forEach(line -> need.merge(line.item().id(), line.amount().pieces(), Integer::sum));
    return need;
  }

  private static Map<String, Integer> sum(List<Counted> some, List<Counted> more) {
    Map<String, Integer> sum = new HashMap<>();
    some.forEach(one -> sum.merge(one.item().id(), one.pieces(), Integer::sum));
    more.forEach(one -> sum.merge(one.item().id(), one.pieces(), Integer::sum));
    return sum;
  }

  private static Map<String, Integer> totals(List<TotalLine> lines) {
    Map<String, Integer> totals = new HashMap<>();
    lines.forEach(
        line ->
            totals.merge(key(line.item(), line.handling()), line.amount().pieces(), Integer::sum));
    return totals;
  }

  private static String key(Item item, Handling handling) {
    return handling + " " + item.id();
  }

  private static List<PartsLine> lines(PartsList list) {
    return list.wheelEnds().stream().flatMap(end -> end.lines().stream()).toList();
  }

  private static Map<Place, List<PartsLine>> byPlace(PartsList list) {
    Map<Place, List<PartsLine>> lines = new HashMap<>();
    for (PartsLine line : lines(list)) {
      line.places()
          .forEach(place -> lines.computeIfAbsent(place, key -> new ArrayList<>()).add(line));
    }
    return lines;
  }

  /** A few kits of anything, so that some needs are met and some are not. */
  private static KitShelf shelf(Random random) {
    List<Kit> kits = new ArrayList<>();
    for (int i = random.nextInt(9); i > 0; i--) {
      Map<String, Integer> contents = new LinkedHashMap<>();
      for (int j = random.nextInt(8); j >= 0; j--) {
        contents.put(ITEMS.get(random.nextInt(ITEMS.size())).id(), 1 + random.nextInt(4));
      }
      if (random.nextBoolean()) {
        contents.put("shoe-with-lining", 2);
      }
      kits.add(
          new Kit(
              "K" + i,
              "kit " + i,
              KitReach.values()[random.nextInt(3)],
              contents,
              random.nextInt(5) == 0
                  ? Optional.empty()
                  : Optional.of(BigDecimal.valueOf(random.nextInt(20_000), 2)),
              List.of("", "FF", "GG").get(random.nextInt(3))));
    }
    return new KitShelf("", Optional.of(Currency.getInstance("EUR")), kits);
  }
}
