package org.brakerules.calc.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Searches the kits that cover a need best: fewest pieces left loose, then fewest kits without a
 * price, then the lowest price, then fewest kits, then fewest pieces left over. Of equally good
 * choices the one that takes more of the kits offered first is taken.
 *
 * <p>Kits of two codes are never mixed. The answer is exact as long as no more than {@value
 * #MOST_EXACT} kinds of kit of a code can contribute; beyond that it is a good one found step by
 * step, and says so.
 */
public final class KitSearch {

  /** The largest number of kinds of kit that are searched to the end. */
  public static final int MOST_EXACT = 12;

  private KitSearch() {}

  /**
   * The best choice; it is empty where nothing offered is of use.
   *
   * @param need what is needed
   * @param offers the kits, each any number of times
   */
  public static KitChoice best(KitNeed need, Collection<KitOffer> offers) {
    return codes(need, offers).stream()
        .map(code -> ofCode(need, offers, code))
        .reduce((one, other) -> better(one, other))
        .orElseThrow();
  }

  private static KitChoice better(KitChoice one, KitChoice other) {
    KitChoice better = other.goodness().compareTo(one.goodness()) < 0 ? other : one;
    boolean exact = one.exact() && other.exact();
    return new KitChoice(
        better.counts(),
        better.loose(),
        better.welcomed(),
        better.leftOver(),
        better.code(),
        better.goodness(),
        exact);
  }

  /** Every code to try, in the order offered; none of a code is a code as well. */
  private static List<String> codes(KitNeed need, Collection<KitOffer> offers) {
    Optional<String> wanted = need.code();
    Stream<String> ofOffers =
        offers.stream()
            .filter(offer -> isOfUse(need, offer))
            .map(KitOffer::code)
            .filter(code -> !code.isEmpty());
    List<String> codes =
        new ArrayList<>(ofOffers.filter(one -> isWanted(wanted, one)).distinct().toList());
    codes.add("");
    return codes;
  }

  private static boolean isWanted(Optional<String> wanted, String code) {
    return wanted.isEmpty() || wanted.get().equals(code);
  }

  private static boolean isOfUse(KitNeed need, KitOffer offer) {
    return need.required().entrySet().stream()
        .anyMatch(one -> one.getValue() > 0 && offer.of(one.getKey()) > 0);
  }

  private static KitChoice ofCode(KitNeed need, Collection<KitOffer> offers, String code) {
    List<KitOffer> fitting =
        offers.stream()
            .filter(offer -> offer.code().isEmpty() || offer.code().equals(code))
            .filter(offer -> isOfUse(need, offer))
            .toList();
    KitField field = KitField.of(need, withoutSpareUnpriced(need, fitting));
    if (field.kits() > MOST_EXACT) {
      return field.choice(GreedySearch.counts(field), false);
    }
    ExactSearch search = new ExactSearch(field);
    int[] counts = search.best();
    return field.choice(counts, !search.isCutShort());
  }

  /** A kit without a price is never better where kits with a price bring all that it brings. */
  private static List<KitOffer> withoutSpareUnpriced(KitNeed need, List<KitOffer> offers) {
    List<KitOffer> priced = offers.stream().filter(one -> one.price().isPresent()).toList();
    boolean pricedBringAll =
        need.required().keySet().stream()
            .filter(item -> offers.stream().anyMatch(one -> one.of(item) > 0))
            .allMatch(item -> priced.stream().anyMatch(one -> one.of(item) > 0));
    return pricedBringAll ? priced : offers;
  }
}
