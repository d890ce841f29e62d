package org.brakerules.benchmark.oracle;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Sign;
import org.brakerules.model.reading.Measurement;

/** What the job says of one part, by the names of the properties. */
record Facts(Part part, boolean missing, Map<String, Object> values) {

  static Facts of(Part part, boolean missing) {
    Map<String, Object> values = new LinkedHashMap<>();
    for (RecordComponent component : part.getClass().getRecordComponents()) {
      values.put(component.getName(), States.valueOf(part, component));
    }
    return new Facts(part, missing, values);
  }

  Place place() {
    return part.place();
  }

  PartKind kind() {
    return part.partKind();
  }

  boolean asFound() {
    return part.condition() == Condition.AS_FOUND;
  }

  Sign sign(String name) {
    return value(name) instanceof Sign sign ? sign : Sign.NOT_CHECKED;
  }

  Optional<Measurement<?>> measurement(String name) {
    return value(name) instanceof Measurement<?> measurement
        ? Optional.of(measurement)
        : Optional.empty();
  }

  /** A state or sign as it is written in a job; condition and station are states as well. */
  String state(String name) {
    return switch (name) {
      case "condition" -> States.written(part.condition());
      case "station" -> part.station().id();
      default -> value(name) instanceof Enum<?> state ? States.written(state) : "";
    };
  }

  List<String> signs(Sign which) {
    return values.entrySet().stream()
        .filter(entry -> entry.getValue() == which)
        .map(Map.Entry::getKey)
        .toList();
  }

  private Object value(String name) {
    Object value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("A " + kind().inWords() + " has no " + name + ".");
    }
    return value;
  }
}
