package org.brakerules.benchmark.oracle;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.model.part.PartKind;

/**
 * What is replaced, by kind and wheel end, and what follows from that. A consequence may not rest
 * on its own part: whether it does is found by going over the bench as if that part were good.
 */
final class Replacements {

  private static final int KINDS = PartKind.values().length;

  private final BitSet replaced = new BitSet();
  private final List<Facts> firstHand = new ArrayList<>();
  private final BitSet once = new BitSet();
  private final BitSet again = new BitSet();
  private final Map<Integer, List<Said>> following = new HashMap<>();
  private final Map<Facts, BitSet> without = new HashMap<>();

  /** The number of a kind of part at a wheel end. */
  static int number(WheelEndView end, PartKind kind) {
    return end.number() * KINDS + kind.ordinal();
  }

  /** A part does not go back for what was found. */
  void replace(Facts part) {
    firstHand.add(part);
    int number = number(part.end(), part.kind());
    (once.get(number) ? again : once).set(number);
  }

  /** Notes that some part of a kind is replaced; whether that is new. */
  boolean note(int number) {
    boolean known = replaced.get(number);
    replaced.set(number);
    return !known;
  }

  /** Something follows from a replacement. */
  void follow(Said said) {
    following.computeIfAbsent(said.cause(), cause -> new ArrayList<>()).add(said);
  }

  /** Whether what was said does not rest on the very part it was said of. */
  boolean stands(Said said) {
    return !said.isConsequence()
        || !said.on().findings().isReplaced()
        || isReplacedFirstHandBut(said.on(), said.cause())
        || without.computeIfAbsent(said.on(), this::goOverWithout).get(said.cause());
  }

  /** Whether another part of a kind and wheel end does not go back for what was found. */
  private boolean isReplacedFirstHandBut(Facts part, int number) {
    boolean isOneOfThem =
        part.findings().isReplacedFirstHand() && number(part.end(), part.kind()) == number;
    return isOneOfThem ? again.get(number) : once.get(number);
  }

  private BitSet goOverWithout(Facts good) {
    BitSet reached = new BitSet();
    for (Facts part : firstHand) {
      if (part != good) {
        reach(number(part.end(), part.kind()), good, reached);
      }
    }
    return reached;
  }

  private void reach(int number, Facts good, BitSet reached) {
    if (reached.get(number)) {
      return;
    }
    reached.set(number);
    for (Said said : following.getOrDefault(number, List.of())) {
      if (said.isReplacement() && said.on() != good) {
        reach(number(said.on().end(), said.on().kind()), good, reached);
      }
    }
  }
}
