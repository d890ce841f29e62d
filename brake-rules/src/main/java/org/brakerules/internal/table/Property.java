package org.brakerules.internal.table;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.brakerules.model.part.AtMost;
import org.brakerules.model.part.Means;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.Tag;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.jspecify.annotations.Nullable;

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

  private final Class<?> owner;
  private final String name;
  private final Class<?> type;
  private final String idName;

  /** Made at first use, as are the others below: few properties of the model are ever read. */
  private volatile @Nullable MethodHandle accessor;

  private volatile @Nullable String meaning;
  private volatile @Nullable Class<?> quantity;

  private Property(RecordComponent component) {
    this.owner = component.getDeclaringRecord();
    this.name = component.getName();
    this.type = component.getType();
    this.idName = hyphenated(name);
  }

  private static String hyphenated(String name) {
    StringBuilder written = new StringBuilder(name.length() + 4);
    for (int i = 0; i < name.length(); i++) {
      char letter = name.charAt(i);
      if (letter >= 'A' && letter <= 'Z') {
        written.append('-').append((char) (letter - 'A' + 'a'));
      } else {
        written.append(letter);
      }
    }
    return written.toString();
  }

  /** Found anew each time, because what Java keeps of it is larger than the property itself. */
  private RecordComponent component() {
    for (RecordComponent one : owner.getRecordComponents()) {
      if (one.getName().equals(name)) {
        return one;
      }
    }
    throw new IllegalStateException(owner + " has no " + name);
  }

  private MethodHandle reader() {
    try {
      return MethodHandles.publicLookup()
          .unreflect(component().getAccessor())
          .asType(MethodType.methodType(Object.class, Object.class));
    } catch (IllegalAccessException e) {
      throw new IllegalStateException("Cannot read " + owner + "." + name, e);
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
    Map<String, Property> all = new LinkedHashMap<>();
    for (RecordComponent one : type.getRecordComponents()) {
      if (one.getType() != Tag.class) {
        all.put(one.getName(), new Property(one));
      }
    }
    return all;
  }

  /** The signs of a kind of part, in the order of its record. */
  public static List<Property> signs(PartKind kind) {
    return SIGNS.computeIfAbsent(kind.recordType(), type -> signsOf(kind));
  }

  private static List<Property> signsOf(PartKind kind) {
    return KNOWN.get(kind.recordType()).values().stream().filter(Property::isSign).toList();
  }

  static List<String> names(Class<?> type) {
    return List.copyOf(KNOWN.get(type).keySet());
  }

  /** The name, such as {@code radialPlay}. */
  public String name() {
    return name;
  }

  /** The name as ids write it, such as {@code radial-play}. */
  public String idName() {
    return idName;
  }

  /** What it means, as a noun phrase. */
  public String meaning() {
    String known = meaning;
    if (known == null) {
      Means means = component().getAnnotation(Means.class);
      known = means == null ? idName.replace('-', ' ') : means.value();
      meaning = known;
    }
    return known;
  }

  /** Whether it is a sign that a look finds. */
  public boolean isSign() {
    return type == Sign.class;
  }

  /** Whether it is measured. */
  public boolean isMeasurement() {
    return type == Measurement.class;
  }

  /** Whether it is measured in the kind of quantity that the value is of. */
  public boolean measures(Quantity<?> value) {
    return quantity().filter(kind -> kind.isInstance(value)).isPresent();
  }

  /** The kind of quantity it is measured in; empty if it is not measured. */
  Optional<Class<?>> quantity() {
    if (quantity == null && type == Measurement.class) {
      ParameterizedType measured = (ParameterizedType) component().getGenericType();
      quantity = (Class<?>) measured.getActualTypeArguments()[0];
    }
    return Optional.ofNullable(quantity);
  }

  /** The largest value it can have on a real brake; empty if none is stated. */
  public Optional<Quantity<?>> atMost() {
    return Optional.ofNullable(component().getAnnotation(AtMost.class))
        .map(most -> Quantities.parse(most.value()));
  }

  /** Whether it is one of a closed list of states. */
  public boolean isState() {
    return type.isEnum() && !isSign();
  }

  /** What its values are of. */
  Class<?> type() {
    return type;
  }

  /** Whether it is a text as marked on the part. */
  public boolean isText() {
    return type == String.class;
  }

  /** Whether it is a record of its own. */
  public boolean isRecord() {
    return type.isRecord();
  }

  /** Its value on a record. */
  public Object valueOf(Object holder) {
    MethodHandle known = accessor;
    if (known == null) {
      known = reader();
      accessor = known;
    }
    try {
      return (Object) known.invokeExact(holder);
    } catch (Throwable e) {
      throw new IllegalStateException("Cannot read " + name() + " of " + holder.getClass(), e);
    }
  }
}
