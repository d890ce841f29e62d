package org.brakerules.benchmark.oracle;

import java.lang.invoke.LambdaMetafactory;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.reading.Measurement;

/**
 * What can be known of one kind of part, each thing by a number below 64, so that a set of them is
 * one {@code long}: first the part's own properties, then how its brake is built.
 */
final class Knowable {

  private static final Map<PartKind, Knowable> OF =
      Arrays.stream(PartKind.values())
          .collect(
              Collectors.toMap(
                  kind -> kind,
                  Knowable::new,
                  (one, other) -> one,
                  () -> new EnumMap<>(PartKind.class)));

  private final PartKind kind;
  private final List<String> names = new ArrayList<>();
  private final List<Class<?>> types = new ArrayList<>();
  private final List<Function<Object, Object>> getters = new ArrayList<>();
  private final int ofPart;

  private Knowable(PartKind kind) {
    this.kind = kind;
    for (RecordComponent component : kind.recordType().getRecordComponents()) {
      names.add(component.getName());
      types.add(component.getType());
      getters.add(getter(component));
    }
    ofPart = names.size();
    BrakeState.ALL.forEach(state -> names.add(state.path()));
    if (names.size() > Long.SIZE) {
      throw new IllegalStateException("Too much is known of a " + kind.inWords() + ".");
    }
  }

  static Knowable of(PartKind kind) {
    return Objects.requireNonNull(OF.get(kind));
  }

  /** How many of the numbers are the part's own. */
  int ofPart() {
    return ofPart;
  }

  /** The value of one of the part's own properties. */
  Object read(Part part, int number) {
    return getters.get(number).apply(part);
  }

  Class<?> type(int number) {
    return types.get(number);
  }

  boolean isMeasured(int number) {
    return number < ofPart && types.get(number) == Measurement.class;
  }

  int number(String name) {
    int number = names.indexOf(name);
    if (number < 0) {
      throw new IllegalArgumentException("A " + kind.inWords() + " has no " + name + ".");
    }
    return number;
  }

  /** The set of these properties. */
  long set(String... of) {
    long set = 0;
    for (String name : of) {
      set |= 1L << number(name);
    }
    return set;
  }

  /** As ids write a property, such as {@code camshaft.end-play}. */
  String id(int number) {
    return kind.id()
        + "."
        + names.get(number).replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }

  /** Calls the accessor as compiled code would. */
  @SuppressWarnings("unchecked") // made for this interface
  private static Function<Object, Object> getter(RecordComponent component) {
    try {
      MethodHandles.Lookup lookup = MethodHandles.lookup();
      MethodHandle accessor = lookup.unreflect(component.getAccessor());
      MethodType erased = MethodType.methodType(Object.class, Object.class);
      return (Function<Object, Object>)
          LambdaMetafactory.metafactory(
                  lookup,
                  "apply",
                  MethodType.methodType(Function.class),
                  erased,
                  accessor,
                  accessor.type())
              .getTarget()
              .invoke();
    } catch (Throwable e) {
      throw new IllegalStateException("Cannot read " + component, e);
    }
  }
}
