package org.brakerules.internal.engine;

import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;

/**
 * Keeps back the facts that no match can contain, because what costs the engine most is a fact it
 * is told of.
 *
 * <p>A rule is at stake when for each of its patterns there is a fact that meets those conditions
 * which look at that fact alone; what joins facts is left to the engine. Since a part may be
 * replaced while the rules speak, such a marker counts as there once a rule that may replace the
 * part is at stake. Only facts that a rule at stake can match pass.
 */
final class FactSieve {

  /** A rule as the sieve sees it. */
  private static final class Outline {

    private final String name;

    /** The patterns for which it needs a fact. */
    private final int[] needs;

    /** These, and those that no fact may match. */
    private final int[] reads;

    /** The kind of part it may replace; empty if its verdict is another. */
    private final Optional<PartKind> replaces;

    Outline(String name, List<Integer> needs, List<Integer> reads, Optional<PartKind> replaces) {
      this.name = name;
      this.needs = numbers(needs);
      this.reads = numbers(reads);
      this.replaces = replaces;
    }

    private static int[] numbers(List<Integer> patterns) {
      int[] numbers = new int[patterns.size()];
      int found = 0;
      for (int pattern : new LinkedHashSet<>(patterns)) {
        numbers[found] = pattern;
        found++;
      }
      return Arrays.copyOf(numbers, found);
    }
  }

  private static final WheelEndPath ANY = WheelEndPath.of(1, Side.LEFT);

  private final Map<Class<?>, TypePatterns> types = new HashMap<>();
  private final TypePatterns ofMarkers = new TypePatterns();
  private final List<Outline> rules = new ArrayList<>();
  private final Map<PartKind, Long> markers = new EnumMap<>(PartKind.class);
  private int patterns;

  private FactSieve() {
    types.put(Replaced.class, ofMarkers);
  }

  /**
   * A sieve for rules.
   *
   * @param mayReplace whether the verdict of a rule may be that its part is replaced
   */
  static FactSieve of(List<Model> models, Predicate<Rule> mayReplace) {
    FactSieve sieve = new FactSieve();
    for (Model model : models) {
      model.getRules().forEach(rule -> sieve.add(rule, mayReplace.test(rule)));
    }
    for (PartKind kind : PartKind.values()) {
      sieve.markers.put(kind, sieve.ofMarkers.held(new Replaced(kind, ANY)));
    }
    return sieve;
  }

  private void add(Rule rule, boolean mayReplace) {
    List<Integer> needs = new ArrayList<>();
    List<Integer> reads = new ArrayList<>();
    Optional<PartKind> replaces = Optional.empty();
    for (Conditions.Step step : Conditions.of(rule)) {
      int pattern = number(step);
      reads.add(pattern);
      if (!step.negated()) {
        needs.add(pattern);
      }
      if (step.isSubject() && mayReplace) {
        replaces = PartKind.of(step.factType());
      }
    }
    rules.add(new Outline(rule.getName(), needs, reads, replaces));
  }

  private int number(Conditions.Step step) {
    refuseGeneral(step.factType());
    List<SingleConstraint> alone =
        step.constraints().stream()
            .filter(condition -> condition.getVariables().length == 1)
            .filter(condition -> step.factType() != Replaced.class || isOfKind(condition))
            .toList();
    int number =
        types.computeIfAbsent(step.factType(), type -> new TypePatterns()).number(alone, patterns);
    patterns = Math.max(patterns, number + 1);
    return number;
  }

  /** Facts are found by their own class, so a pattern over a wider type would never be at stake. */
  private static void refuseGeneral(Class<?> factType) {
    if (!Modifier.isFinal(factType.getModifiers())) {
      throw new IllegalStateException(
          "A pattern must name the type of its facts, and none is exactly a "
              + factType.getSimpleName()
              + ".");
    }
  }

  /** At which wheel end a part will be replaced is not known before. */
  private static boolean isOfKind(SingleConstraint condition) {
    return Conditions.properties(condition).equals(List.of("partKind"));
  }

  /** The names of the rules at stake in the facts of a job. */
  Set<String> atStake(List<?> facts) {
    boolean[] met = new boolean[patterns];
    for (Object fact : facts) {
      TypePatterns ofType = types.get(fact.getClass());
      if (ofType != null) {
        ofType.mark(ofType.held(fact), met);
      }
    }
    wanted(met);
    Set<String> atStake = new HashSet<>();
    for (Outline rule : rules) {
      if (areMet(rule, met)) {
        atStake.add(rule.name);
      }
    }
    return atStake;
  }

  /** Sifts the facts of a job. */
  Sifted sift(List<?> facts) {
    boolean[] met = new boolean[patterns];
    long[] held = new long[facts.size()];
    for (int i = 0; i < held.length; i++) {
      TypePatterns ofType = types.get(facts.get(i).getClass());
      if (ofType != null) {
        held[i] = ofType.held(facts.get(i));
        ofType.mark(held[i], met);
      }
    }
    boolean[] wanted = wanted(met);
    List<Object> passed = new ArrayList<>();
    for (int i = 0; i < held.length; i++) {
      TypePatterns ofType = types.get(facts.get(i).getClass());
      if (ofType != null && ofType.isWanted(held[i], wanted)) {
        passed.add(facts.get(i));
      }
    }
    return new Sifted(passed, marker -> isWanted(marker, wanted));
  }

  /** The patterns of the rules at stake. */
  private boolean[] wanted(boolean[] met) {
    boolean[] wanted = new boolean[patterns];
    boolean[] atStake = new boolean[rules.size()];
    boolean grown = true;
    while (grown) {
      grown = false;
      for (int i = 0; i < atStake.length; i++) {
        if (!atStake[i] && areMet(rules.get(i), met)) {
          atStake[i] = true;
          grown = true;
          stake(rules.get(i), met, wanted);
        }
      }
    }
    return wanted;
  }

  private void stake(Outline rule, boolean[] met, boolean[] wanted) {
    for (int pattern : rule.reads) {
      wanted[pattern] = true;
    }
    if (rule.replaces.isPresent()) {
      ofMarkers.mark(held(rule.replaces.get()), met);
    }
  }

  private static boolean areMet(Outline rule, boolean[] met) {
    for (int pattern : rule.needs) {
      if (!met[pattern]) {
        return false;
      }
    }
    return true;
  }

  private boolean isWanted(Replaced marker, boolean[] wanted) {
    return ofMarkers.isWanted(held(marker.partKind()), wanted);
  }

  private long held(PartKind replaced) {
    return Objects.requireNonNull(markers.get(replaced));
  }

  /**
   * What passed.
   *
   * @param facts the facts that a match can contain
   * @param takes whether a match can contain a part that is replaced while the rules speak
   */
  record Sifted(List<Object> facts, Predicate<Replaced> takes) {

    /** Nothing was kept back. */
    static Sifted all(List<?> facts) {
      return new Sifted(List.copyOf(facts), marker -> true);
    }
  }
}
