package org.brakerules.model.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.brakerules.model.part.AtMost;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.Tag;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/**
 * The fields of a part or layout record, found from its components once.
 *
 * <p>A tag is no field: its contents come from elsewhere in the document. It is the first component
 * of a part.
 *
 * @param <R> the record
 */
final class RecordShape<R extends Record> {

  private static final Map<Class<?>, RecordShape<?>> BY_TYPE = new ConcurrentHashMap<>();

  private final Constructor<R> constructor;
  private final List<Component<?>> components;

  /** A property and how a record gives its value. */
  private record Component<T>(Property<T> property, RecordComponent component) {

    T read(Fields fields, Values values, Station own) {
      return fields
          .optional(property.name())
          .map(node -> property.read(node, values, own))
          .orElseGet(property::unstated);
    }

    @SuppressWarnings("unchecked") // the property was made for the type of the component
    void write(Record owner, Station own, JsonGenerator out) throws IOException {
      T value = (T) valueIn(owner);
      if (!value.equals(property.unstated())) {
        out.writeFieldName(property.name());
        property.write(value, own, out);
      }
    }

    private Object valueIn(Record owner) {
      try {
        return component.getAccessor().invoke(owner);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(component + " cannot be read.", e);
      }
    }
  }

  private RecordShape(Class<R> type) {
    RecordComponent[] all = type.getRecordComponents();
    constructor = canonicalConstructor(type, all);
    components = new ArrayList<>();
    for (RecordComponent one : all) {
      if (one.getType() != Tag.class) {
        components.add(component(one));
      }
    }
  }

  @SuppressWarnings("unchecked") // the shape of a type is filed under that type
  static <R extends Record> RecordShape<R> of(Class<R> type) {
    RecordShape<?> known = BY_TYPE.get(type);
    if (known == null) {
      // Not computeIfAbsent: the shape of a layout makes the shape of its chamber.
      known = new RecordShape<>(type);
      BY_TYPE.put(type, known);
    }
    return (RecordShape<R>) known;
  }

  /** The properties, in the order of the components. */
  List<Property<?>> properties() {
    return components.stream().<Property<?>>map(Component::property).toList();
  }

  /** The record of which nothing is stated; only for records without a tag. */
  R unstated() {
    return create(components.stream().<Object>map(one -> one.property().unstated()).toList());
  }

  /** Reads an object that has no other fields than the components. */
  Optional<R> readAlone(Node node, Values values) {
    return Fields.of(node, "an object in braces", values.problems())
        .flatMap(
            fields -> {
              List<Object> read = readValues(fields, values, Station.UNKNOWN);
              fields.refuseOthers();
              return values.problems().build(node, () -> create(read));
            });
  }

  /** Reads the components of a part that carries the tag. */
  Supplier<R> readTagged(Tag tag, Fields fields, Values values) {
    List<Object> arguments = readValues(fields, values, ownStation(tag));
    arguments.add(0, tag);
    return () -> create(arguments);
  }

  /** The station a reading has that states none. */
  static Station ownStation(Tag tag) {
    Station station = tag.place().station();
    return station == Station.WHOLE_PART ? Station.UNKNOWN : station;
  }

  /** Writes every component that is stated. */
  void writeFields(Record owner, Station own, JsonGenerator out) throws IOException {
    for (Component<?> component : components) {
      component.write(owner, own, out);
    }
  }

  private List<Object> readValues(Fields fields, Values values, Station own) {
    List<Object> read = new ArrayList<>();
    for (Component<?> component : components) {
      read.add(component.read(fields, values, own));
    }
    return read;
  }

  private R create(List<Object> arguments) {
    try {
      return constructor.newInstance(arguments.toArray());
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException refused) {
        throw refused;
      }
      throw new IllegalStateException(constructor + " failed.", e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(constructor + " cannot be called.", e);
    }
  }

  private static <R extends Record> Constructor<R> canonicalConstructor(
      Class<R> type, RecordComponent[] components) {
    try {
      Class<?>[] types = new Class<?>[components.length];
      for (int i = 0; i < types.length; i++) {
        types[i] = components[i].getType();
      }
      return type.getConstructor(types);
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(type + " is no public record.", e);
    }
  }

  private static Component<?> component(RecordComponent component) {
    return new Component<>(property(component), component);
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the type is looked at before it is cast to
  private static Property<?> property(RecordComponent component) {
    String name = component.getName();
    Class type = component.getType();
    if (type.isEnum()) {
      return new Property.Choice(name, Names.of(type), unstated(type));
    }
    if (type == Measurement.class) {
      Class quantity = onlyTypeArgument(component);
      return new Property.Measured(name, quantity, atMost(component, quantity));
    }
    if (type == Optional.class) {
      Class quantity = onlyTypeArgument(component);
      return new Property.Amount(name, quantity, atMost(component, quantity));
    }
    if (type == String.class) {
      return new Property.Marking(name);
    }
    return new Property.Nested(name, of(type));
  }

  private static <E extends Enum<E>> E unstated(Class<E> type) {
    String name = type == Sign.class ? Sign.NOT_CHECKED.name() : "UNKNOWN";
    return Enum.valueOf(type, name);
  }

  private static <Q extends Quantity<Q>> Optional<Q> atMost(
      RecordComponent component, Class<Q> type) {
    return Optional.ofNullable(component.getAnnotation(AtMost.class))
        .map(atMost -> Quantities.parse(type, atMost.value()));
  }

  private static Class<?> onlyTypeArgument(RecordComponent component) {
    Type argument = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
    return (Class<?>) argument;
  }
}
