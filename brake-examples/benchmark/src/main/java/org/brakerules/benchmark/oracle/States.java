package org.brakerules.benchmark.oracle;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.quantity.Length;

/** What a job states, by the names of the properties and as the tables write it. */
final class States {

  private States() {}

  /** How one brake is built; empty where it is not stated. */
  static Map<String, String> ofBrake(Layout layout, AxleKind axle, Optional<LocalDate> builtOn) {
    Map<String, String> states = new HashMap<>();
    read("layout", layout, states);
    states.put("axle.kind", written(axle));
    states.put("vehicle.builtOn", builtOn.map(LocalDate::toString).orElse(""));
    return states;
  }

  private static void read(String path, Record record, Map<String, String> states) {
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      String name = path + "." + component.getName();
      Object value = valueOf(record, component);
      if (value instanceof Record inner) {
        read(name, inner, states);
      } else {
        states.put(name, written(value));
      }
    }
  }

  static Object valueOf(Object record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("Cannot read " + component, e);
    }
  }

  private static String written(Object value) {
    if (value instanceof Optional<?> length) {
      return length.map(one -> amount((Length) one)).orElse("");
    }
    return value instanceof Enum<?> constant ? written(constant) : value.toString();
  }

  /** As a job writes it, such as {@code as-found}. */
  static String written(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Lengths go by their amount, however they are written. */
  static String amount(Length length) {
    return length.nanometres() + " nm";
  }
}
