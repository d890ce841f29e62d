package org.brakerules.random;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.model.part.PartKind;

/**
 * What one rule asks for, read from its text. A rule that needs four things at once hardly ever
 * finds them by chance; three axles of five are aimed at one rule, and many hit it.
 */
final class Aim {

  private static final Pattern PATTERN = Pattern.compile("(not )?(\\w+)\\( ([^)]*) \\)");
  private static final Pattern STATE = Pattern.compile("(\\w+) == \\w+\\.([A-Z_]+)");
  private static final Pattern LIMIT = Pattern.compile("limit == \"([a-z.-]+)\"");
  private static final Pattern ASKED = Pattern.compile("\\$part, \"([a-z.-]+)\"");

  private static final List<Aim> AT_EACH_RULE =
      BrakeRules.standard().rules().stream().map(Aim::new).toList();
  private static final Aim NONE = new Aim();

  private final Set<PartKind> kinds = EnumSet.noneOf(PartKind.class);
  private final Map<String, List<String>> wanted = new HashMap<>();
  private final List<String> limits = new ArrayList<>();
  private final List<String> asked = new ArrayList<>();

  private Aim() {}

  private Aim(Rule rule) {
    String text = rule.text();
    PATTERN
        .matcher(text.substring(text.indexOf("\nwhen")))
        .results()
        .filter(found -> found.group(1) == null)
        .forEach(this::read);
    ASKED.matcher(text).results().map(found -> found.group(1)).forEach(asked::add);
  }

  /** An aim at one rule, in three cases of five. */
  static Aim any(Dice dice) {
    return dice.percent(60) ? dice.any(AT_EACH_RULE) : NONE;
  }

  private void read(MatchResult pattern) {
    String fact = pattern.group(2);
    String body = pattern.group(3);
    kindOf(fact).ifPresent(kinds::add);
    STATE
        .matcher(body)
        .results()
        .forEach(
            state -> {
              if (state.group(1).equals("partKind")) {
                kinds.add(PartKind.valueOf(state.group(2)));
              }
              wanted
                  .computeIfAbsent(fact + "." + state.group(1), one -> new ArrayList<>())
                  .add(state.group(2));
            });
    LIMIT.matcher(body).results().map(found -> found.group(1)).forEach(this::beyond);
  }

  private void beyond(String limit) {
    limits.add(limit);
    PartKind.byId(limit.substring(0, limit.indexOf('.'))).ifPresent(kinds::add);
  }

  private static Optional<PartKind> kindOf(String fact) {
    return List.of(PartKind.values()).stream()
        .filter(kind -> kind.recordType().getSimpleName().equals(fact))
        .findFirst();
  }

  Set<PartKind> kinds() {
    return kinds;
  }

  /** The state that the rule wants of a property of a brake; empty if it wants none. */
  Optional<Object> ofBrake(String property, Class<?> type, Dice dice) {
    return state("Brake." + property, type, dice);
  }

  /** The state that the rule wants of a property of a part; empty if it wants none. */
  Optional<Object> ofPart(PartKind kind, String property, Class<?> type, Dice dice) {
    return state(kind.recordType().getSimpleName() + "." + property, type, dice);
  }

  private Optional<Object> state(String name, Class<?> type, Dice dice) {
    Collection<String> states = wanted.getOrDefault(name, List.of());
    return states.isEmpty() || dice.percent(10)
        ? Optional.empty()
        : Optional.of(constant(type, dice.any(List.copyOf(states))));
  }

  private static Object constant(Class<?> type, String name) {
    return List.of(type.getEnumConstants()).stream()
        .filter(constant -> ((Enum<?>) constant).name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(type + " has no " + name));
  }

  /** Whether the rule asks for a look that can only be open while nobody has looked. */
  boolean asksFor(PartKind kind, RecordComponent component) {
    if (asked.isEmpty()) {
      return false;
    }
    String name = component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    return asked.contains(kind.id() + "." + name);
  }

  /** Whether the rule wants a reading beyond this limit. */
  boolean isBeyond(String limit) {
    return limits.contains(limit);
  }
}
