package org.brakerules.internal.table;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.brakerules.model.part.AtMost;
import org.brakerules.model.part.Means;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.Tag;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;

/** One property of a record of the model, read by its name. */
public final class Property {

  private static final ClassValue<Map<String, Property>> KNOWN =
      new ClassValue<>() {
        @Override
        protected Map<String, Property> computeValue(Class<?> type) {
          return all(type);
        }
      };

  private static final Map<Class<?>, List<Property>> SIGNS = new ConcurrentHashMap<>();

  private final RecordComponent component;
  private final MethodHandle accessor;
  private final String idName;
  private final String meaning;
  private final Optional<Quantity<?>> atMost;
  private final boolean sign;
  private final boolean measurement;

  private Property(RecordComponent component) {
    this.component = component;
    this.accessor = reader(component);
    this.idName = component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    Means means = component.getAnnotation(Means.class);
    this.meaning = means == null ? idName.replace('-', ' ') : means.value();
    this.atMost =
        Optional.ofNullable(component.getAnnotation(AtMost.class))
            .map(most -> Quantities.parse(most.value()));
    this.sign = component.getType() == Sign.class;
    this.measurement = component.getType() == Measurement.class;
  }

  private static MethodHandle reader(RecordComponent component) {
    try {
      return MethodHandles.publicLookup()
          .unreflect(component.getAccessor())
          .asType(MethodType.methodType(Object.class, Object.class));
    } catch (IllegalAccessException e) {
      throw new IllegalStateException("Cannot read " + component, e);
    }
  }

  /** Finds a property of a kind of part. */
  public static Optional<Property> of(PartKind kind, String name) {
    return of(kind.recordType(), name);
  }

  /** Finds a property of a record. */
  public static Optional<Property> of(Class<?> type, String name) {
    return Optional.ofNullable(KNOWN.get(type).get(name));
  }

  private static Map<String, Property> all(Class<?> type) {
    return Arrays.stream(type.getRecordComponents())
        .filter(one -> one.getType() != Tag.class)
        .collect(Collectors.toUnmodifiableMap(RecordComponent::getName, Property::new));
  }

  /** The signs of a kind of part, in the order of its record. */
  public static List<Property> signs(PartKind kind) {
    return SIGNS.computeIfAbsent(kind.recordType(), type -> signsOf(kind));
  }

  private static List<Property> signsOf(PartKind kind) {
    return names(kind.recordType()).stream()
        .flatMap(name -> of(kind, name).stream())
        .filter(Property::isSign)
        .toList();
  }

  static List<String> names(Class<?> type) {
    return Arrays.stream(type.getRecordComponents())
        .filter(one -> one.getType() != Tag.class)
        .map(RecordComponent::getName)
        .toList();
  }

  /** The name, such as {@code radialPlay}. */
  public String name() {
    return component.getName();
  }

  /** The name as ids write it, such as {@code radial-play}. */
  public String idName() {
    return idName;
  }

  /** What it means, as a noun phrase. */
  public String meaning() {
    return meaning;
  }

  /** Whether it is a sign that a look finds. */
  public boolean isSign() {
    return sign;
  }

  /** Whether it is measured. */
  public boolean isMeasurement() {
    return measurement;
  }

  /** Whether it is measured in the kind of quantity that the value is of. */
  public boolean measures(Quantity<?> value) {
    return quantity().filter(kind -> kind.isInstance(value)).isPresent();
  }

  /** The kind of quantity it is measured in; empty if it is not measured. */
  Optional<Class<?>> quantity() {
    return component.getGenericType() instanceof ParameterizedType measured
            && measured.getActualTypeArguments()[0] instanceof Class<?> kind
        ? Optional.of(kind)
        : Optional.empty();
  }

  /** The largest value it can have on a real brake; empty if none is stated. */
  public Optional<Quantity<?>> atMost() {
    return atMost;
  }

  /** Whether it is one of a closed list of states. */
  public boolean isState() {
    return component.getType().isEnum() && !isSign();
  }

  /** What its values are of. */
  Class<?> type() {
    return component.getType();
  }

  /** Whether it is a text as marked on the part. */
  public boolean isText() {
    return component.getType() == String.class;
  }

  /** Whether it is a record of its own. */
  public boolean isRecord() {
    return component.getType().isRecord();
  }

  /** Its value on a record. */
  public Object valueOf(Object holder) {
    try {
      return (Object) accessor.invokeExact(holder);
    } catch (Throwable e) {
      throw new IllegalStateException("Cannot read " + name() + " of " + holder.getClass(), e);
    }
  }
}
