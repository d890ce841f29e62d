package org.brakerules.linter.internal.language;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.Tag;
import org.brakerules.model.reading.Measurement;

/**
 * A property of a record of the model, which tables name.
 *
 * @param name the name
 * @param type the type
 * @param quantity the kind of quantity it holds; empty if it holds none
 */
public record ModelProperty(String name, Class<?> type, Optional<Class<?>> quantity) {

  /** Asking a class for its components is slow, and every row of every table does. */
  private static final Map<Class<?>, List<ModelProperty>> KNOWN = new ConcurrentHashMap<>();

  /** The properties of a kind of part, in the order of its record. */
  public static List<ModelProperty> of(PartKind kind) {
    return of(kind.recordType());
  }

  /** The properties of a record, in its order. */
  public static List<ModelProperty> of(Class<?> type) {
    return KNOWN.computeIfAbsent(type, ModelProperty::read);
  }

  /** Finds a property of a kind of part. */
  public static Optional<ModelProperty> find(PartKind kind, String name) {
    return of(kind).stream().filter(property -> property.name().equals(name)).findFirst();
  }

  /** Whether it is a sign that a look finds. */
  public boolean isSign() {
    return type == Sign.class;
  }

  /** Whether it is measured. */
  public boolean isMeasurement() {
    return type == Measurement.class;
  }

  private static List<ModelProperty> read(Class<?> type) {
    return Arrays.stream(type.getRecordComponents())
        .filter(component -> component.getType() != Tag.class)
        .map(ModelProperty::of)
        .toList();
  }

  private static ModelProperty of(RecordComponent component) {
    Optional<Class<?>> quantity =
        component.getGenericType() instanceof ParameterizedType holder
                && holder.getActualTypeArguments()[0] instanceof Class<?> held
            ? Optional.of(held)
            : Optional.empty();
    return new ModelProperty(component.getName(), component.getType(), quantity);
  }
}
