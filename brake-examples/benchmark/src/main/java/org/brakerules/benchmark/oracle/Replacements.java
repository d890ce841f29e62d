package org.brakerules.benchmark.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What follows from what is replaced. A consequence may not rest on its own part: whether it does
 * is found by going over the bench as if that part were good.
 */
final class Replacements {

  private final List<Facts> firstHand = new ArrayList<>();
  private final Map<Facts, Set<Renewal>> without = new HashMap<>();

  /** A part does not go back for what was found. */
  void replace(Facts part) {
    firstHand.add(part);
    part.renewal().addFirstHand();
  }

  /** Whether what was said does not rest on the very part it was said of. */
  boolean stands(Said said) {
    Renewal cause = said.cause();
    return cause == null
        || !said.on().findings().isReplaced()
        || isFirstHandBut(said.on(), cause)
        || without.computeIfAbsent(said.on(), this::goOverWithout).contains(cause);
  }

  /** Whether a part other than this one is replaced for what was found. */
  private static boolean isFirstHandBut(Facts part, Renewal cause) {
    boolean isOneOfThem = part.renewal() == cause && part.findings().isReplacedFirstHand();
    return cause.firstHand() > (isOneOfThem ? 1 : 0);
  }

  private Set<Renewal> goOverWithout(Facts good) {
    Set<Renewal> reached = new HashSet<>();
    for (Facts part : firstHand) {
      if (part != good) {
        reach(part.renewal(), good, reached);
      }
    }
    return reached;
  }

  private static void reach(Renewal renewal, Facts good, Set<Renewal> reached) {
    if (!reached.add(renewal)) {
      return;
    }
    for (Said said : renewal.following()) {
      if (said.isReplacement() && said.on() != good) {
        reach(said.on().renewal(), good, reached);
      }
    }
  }
}
