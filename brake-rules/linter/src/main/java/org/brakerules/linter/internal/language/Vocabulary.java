package org.brakerules.linter.internal.language;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;

/** Every fact type, property and constant that conditions may name. */
public final class Vocabulary {

  public static final String BEYOND_LIMIT = "BeyondLimit";
  public static final String REPLACED = "Replaced";
  public static final String DISTURBED = "Disturbed";
  public static final String BRAKE = "Brake";
  public static final String UNLIKE_PARTNER = "UnlikePartner";
  public static final String READINGS_CONTRADICT = "ReadingsContradict";
  public static final String WHEEL_END = "wheelEnd";
  public static final String PARTNER = "partner";

  /** Facts that only findings of the same job make: their absence depends on the order of rules. */
  public static final Set<String> MADE_BY_FINDINGS =
      Set.of(BEYOND_LIMIT, REPLACED, DISTURBED, UNLIKE_PARTNER, READINGS_CONTRADICT);

  private static final Map<String, Class<?>> EVERY_PART =
      Map.of(
          WHEEL_END,
          WheelEndPath.class,
          PARTNER,
          WheelEndPath.class,
          "station",
          Station.class,
          "presence",
          Presence.class,
          "condition",
          Condition.class);

  private static final Map<String, FactType> FACTS = facts();
  private static final Map<String, Class<?>> CONSTANTS = constants();

  private Vocabulary() {}

  /** Finds a fact type by its name in patterns. */
  public static Optional<FactType> fact(String name) {
    return Optional.ofNullable(FACTS.get(name));
  }

  /** The names of all fact types. */
  public static Set<String> factNames() {
    return FACTS.keySet();
  }

  /** The fact types that are no parts. */
  public static List<FactType> otherThanParts() {
    return OtherFacts.ALL;
  }

  /** The names of the types that constants belong to, such as {@code Sign}. */
  public static Collection<String> constantTypes() {
    return CONSTANTS.keySet();
  }

  /** The constants of a type by its name; empty if there is no such type. */
  public static List<String> constantsOf(String type) {
    return Optional.ofNullable(CONSTANTS.get(type)).map(Vocabulary::constantsOf).orElse(List.of());
  }

  /** The constants of a type, in its order; empty for a type that has none. */
  public static List<String> constantsOf(Class<?> type) {
    return type.isEnum()
        ? Arrays.stream(type.getEnumConstants()).map(one -> ((Enum<?>) one).name()).toList()
        : List.of();
  }

  private static Map<String, FactType> facts() {
    Map<String, FactType> facts = new TreeMap<>();
    Stream.concat(OtherFacts.ALL.stream(), Arrays.stream(PartKind.values()).map(Vocabulary::part))
        .forEach(fact -> facts.put(fact.name(), fact));
    return Collections.unmodifiableMap(facts);
  }

  private static FactType part(PartKind kind) {
    Map<String, Class<?>> properties = new LinkedHashMap<>(EVERY_PART);
    for (RecordComponent component : kind.recordType().getRecordComponents()) {
      if (component.getType() != Tag.class) {
        properties.put(component.getName(), component.getType());
      }
    }
    String name = kind.recordType().getSimpleName();
    return new FactType(name, Optional.of(kind), Collections.unmodifiableMap(properties));
  }

  private static Map<String, Class<?>> constants() {
    Map<String, Class<?>> constants = new TreeMap<>();
    FACTS.values().stream()
        .flatMap(fact -> fact.properties().values().stream())
        .filter(Class::isEnum)
        .forEach(type -> constants.put(type.getSimpleName(), type));
    return Collections.unmodifiableMap(constants);
  }
}
