package org.brakerules.linter.internal.language;

import java.util.Map;
import java.util.Optional;
import org.brakerules.model.part.PartKind;

/**
 * A kind of fact that conditions speak of.
 *
 * @param name the name in patterns
 * @param kind the kind of part; empty if the fact is no part
 * @param properties the properties by name, with their types
 */
public record FactType(String name, Optional<PartKind> kind, Map<String, Class<?>> properties) {

  /** Whether the fact is a part of the job. */
  public boolean isPart() {
    return kind.isPresent();
  }

  /** The type of a property; empty if there is no such property. */
  public Optional<Class<?>> typeOf(String property) {
    return Optional.ofNullable(properties.get(property));
  }
}
