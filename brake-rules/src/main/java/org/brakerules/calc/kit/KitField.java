package org.brakerules.calc.kit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * A need and the kits that can contribute to it, in numbers.
 *
 * @param need what is needed
 * @param offers the kits, in the order offered
 * @param items the required items that some kit brings
 */
record KitField(KitNeed need, List<KitOffer> offers, List<String> items) {

  static KitField of(KitNeed need, List<KitOffer> offers) {
    List<String> items =
        need.required().entrySet().stream()
            .filter(one -> one.getValue() > 0)
            .map(Map.Entry::getKey)
            .filter(item -> offers.stream().anyMatch(offer -> offer.of(item) > 0))
            .toList();
    return new KitField(need, offers, items);
  }

  int kits() {
    return offers.size();
  }

  /** How many of each required item are to be covered. */
  int[] required() {
    return items.stream().mapToInt(item -> need.required().get(item)).toArray();
  }

  /** How many of each required item a kit brings. */
  int[][] contents() {
    return offers.stream()
        .map(offer -> items.stream().mapToInt(offer::of).toArray())
        .toArray(int[][]::new);
  }

  /** The price of each kit in the smallest unit that any of them has; zero if it has none. */
  long[] prices() {
    int scale =
        offers.stream()
            .flatMap(offer -> offer.price().stream())
            .mapToInt(BigDecimal::scale)
            .max()
            .orElse(0);
    return offers.stream()
        .mapToLong(
            offer ->
                offer
                    .price()
                    .map(price -> price.movePointRight(Math.max(0, scale)).longValueExact())
                    .orElse(0L))
        .toArray();
  }

  boolean isPriced(int kit) {
    return offers.get(kit).price().isPresent();
  }

  /** How many of the kits' pieces are of no use. */
  int leftOver(int[] counts) {
    return leftOvers(counts).values().stream().mapToInt(Integer::intValue).sum();
  }

  KitChoice choice(int[] counts, boolean exact) {
    Map<String, Integer> taken = new LinkedHashMap<>();
    List<KitOffer> chosen = new ArrayList<>();
    int unpriced = 0;
    BigDecimal price = BigDecimal.ZERO;
    for (int kit = 0; kit < counts.length; kit++) {
      if (counts[kit] > 0) {
        KitOffer offer = offers.get(kit);
        chosen.add(offer);
        taken.put(offer.id(), counts[kit]);
        unpriced += isPriced(kit) ? 0 : counts[kit];
        price =
            price.add(
                offer.price().orElse(BigDecimal.ZERO).multiply(BigDecimal.valueOf(counts[kit])));
      }
    }
    Map<String, Integer> brought = brought(counts);
    Map<String, Integer> loose = new HashMap<>();
    need.required()
        .forEach((item, count) -> put(loose, item, count - brought.getOrDefault(item, 0)));
    Map<String, Integer> leftOver = leftOvers(counts);
    int kits = taken.values().stream().mapToInt(Integer::intValue).sum();
    int missing = loose.values().stream().mapToInt(Integer::intValue).sum();
    int spare = leftOver.values().stream().mapToInt(Integer::intValue).sum();
    String code =
        chosen.stream().map(KitOffer::code).filter(one -> !one.isEmpty()).findFirst().orElse("");
    return new KitChoice(
        taken,
        loose,
        welcomed(brought),
        leftOver,
        code,
        new Goodness(missing, unpriced, price, kits, spare),
        exact);
  }

  private Map<String, Integer> brought(int[] counts) {
    Map<String, Integer> brought = new HashMap<>();
    for (int kit = 0; kit < counts.length; kit++) {
      int count = counts[kit];
      if (count > 0) {
        offers
            .get(kit)
            .contents()
            .forEach((item, each) -> brought.merge(item, count * each, Integer::sum));
      }
    }
    return brought;
  }

  private Map<String, Integer> welcomed(Map<String, Integer> brought) {
    Map<String, Integer> welcomed = new HashMap<>();
    need.welcome()
        .forEach((item, most) -> put(welcomed, item, Math.min(most, beyond(item, brought))));
    return welcomed;
  }

  private Map<String, Integer> leftOvers(int[] counts) {
    Map<String, Integer> brought = brought(counts);
    Map<String, Integer> left = new HashMap<>();
    for (String item : new TreeSet<>(brought.keySet())) {
      put(left, item, beyond(item, brought) - need.welcome().getOrDefault(item, 0));
    }
    return left;
  }

  /** How many are brought beyond those required. */
  private int beyond(String item, Map<String, Integer> brought) {
    return Math.max(0, brought.getOrDefault(item, 0) - need.required().getOrDefault(item, 0));
  }

  private static void put(Map<String, Integer> counts, String item, int count) {
    if (count > 0) {
      counts.put(item, count);
    }
  }
}
