package org.brakerules.calc.kit;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tries every choice of kits that could be sensible, without any cleverness. */
final class EveryChoice {

  private final KitNeed need;
  private final List<KitOffer> offers;
  private final int most;
  private Optional<Goodness> best = Optional.empty();

  private EveryChoice(KitNeed need, List<KitOffer> offers) {
    this.need = need;
    this.offers = offers;
    this.most = need.required().values().stream().mapToInt(Integer::intValue).max().orElse(0);
  }

  static Goodness best(KitNeed need, List<KitOffer> offers) {
    EveryChoice every = new EveryChoice(need, offers);
    every.tryFrom(0, new HashMap<>());
    return every.best.orElseThrow();
  }

  private void tryFrom(int kit, Map<KitOffer, Integer> taken) {
    if (kit == offers.size()) {
      judge(taken);
      return;
    }
    for (int count = 0; count <= most; count++) {
      taken.put(offers.get(kit), count);
      tryFrom(kit + 1, taken);
    }
    taken.remove(offers.get(kit));
  }

  private void judge(Map<KitOffer, Integer> all) {
    Map<KitOffer, Integer> taken =
        all.entrySet().stream()
            .filter(one -> one.getValue() > 0)
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    long codes =
        taken.keySet().stream()
            .map(KitOffer::code)
            .filter(code -> !code.isEmpty())
            .distinct()
            .count();
    boolean wrongCode =
        need.code().isPresent()
            && taken.keySet().stream()
                .anyMatch(kit -> !kit.code().isEmpty() && !kit.code().equals(need.code().get()));
    if (codes > 1 || wrongCode) {
      return;
    }
    Goodness goodness = goodness(taken);
    if (best.isEmpty() || goodness.compareTo(best.get()) < 0) {
      best = Optional.of(goodness);
    }
  }

  private Goodness goodness(Map<KitOffer, Integer> taken) {
    Map<String, Integer> brought = new HashMap<>();
    BigDecimal price = BigDecimal.ZERO;
    int unpriced = 0;
    int kits = 0;
    for (Map.Entry<KitOffer, Integer> one : taken.entrySet()) {
      int count = one.getValue();
      kits += count;
      unpriced += one.getKey().price().isEmpty() ? count : 0;
      price =
          price.add(
              one.getKey().price().orElse(BigDecimal.ZERO).multiply(BigDecimal.valueOf(count)));
      one.getKey()
          .contents()
          .forEach((item, each) -> brought.merge(item, each * count, Integer::sum));
    }
    int loose = 0;
    for (Map.Entry<String, Integer> one : need.required().entrySet()) {
      loose += Math.max(0, one.getValue() - brought.getOrDefault(one.getKey(), 0));
    }
    int leftOver = 0;
    for (Map.Entry<String, Integer> one : brought.entrySet()) {
      int of =
          need.required().getOrDefault(one.getKey(), 0)
              + need.welcome().getOrDefault(one.getKey(), 0);
      leftOver += Math.max(0, one.getValue() - of);
    }
    return new Goodness(loose, unpriced, price, kits, leftOver);
  }
}
