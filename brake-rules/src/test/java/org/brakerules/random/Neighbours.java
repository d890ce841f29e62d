package org.brakerules.random;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.model.part.PartKind;

/**
 * The kinds of part that one rule speaks of together. A wheel end of a few kinds is quickly
 * decided; among neighbours the rules still find what they ask for.
 */
final class Neighbours {

  private static final List<PartKind> KINDS = List.of(PartKind.values());
  private static final Map<PartKind, List<PartKind>> OF = inRules(BrakeRules.standard().rules());

  private Neighbours() {}

  /** A few kinds, most of them neighbours; once in a while all. */
  static Set<PartKind> handful(Dice dice) {
    if (dice.percent(5)) {
      return EnumSet.allOf(PartKind.class);
    }
    List<PartKind> handful = new ArrayList<>(List.of(dice.any(KINDS)));
    for (int more = dice.below(10); more > 0; more--) {
      List<PartKind> beside = OF.getOrDefault(dice.any(handful), List.of());
      handful.add(dice.percent(80) && !beside.isEmpty() ? dice.any(beside) : dice.any(KINDS));
    }
    return EnumSet.copyOf(handful);
  }

  private static Map<PartKind, List<PartKind>> inRules(List<Rule> rules) {
    Map<PartKind, List<PartKind>> neighbours = new EnumMap<>(PartKind.class);
    for (Rule rule : rules) {
      List<PartKind> together = KINDS.stream().filter(kind -> names(rule, kind)).toList();
      for (PartKind kind : together) {
        together.stream()
            .filter(other -> other != kind)
            .forEach(
                other -> neighbours.computeIfAbsent(kind, one -> new ArrayList<>()).add(other));
      }
    }
    return neighbours;
  }

  /** As a part, as the kind of a marker, or by one of its limits. */
  private static boolean names(Rule rule, PartKind kind) {
    String pattern =
        "\\b"
            + kind.recordType().getSimpleName()
            + "\\(|PartKind\\."
            + kind.name()
            + "\\b|limit == \""
            + kind.id()
            + "\\.";
    return Pattern.compile(pattern).matcher(rule.text()).find();
  }
}
