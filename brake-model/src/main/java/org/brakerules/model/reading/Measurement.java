package org.brakerules.model.reading;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.model.quantity.Quantity;

/**
 * Everything read of one property of a part: no reading, one, or several taken at other stations,
 * in other ways, or repeated. Of the readings a limit accepts, the worst one is held against it.
 *
 * @param readings the readings in the order written
 */
public record Measurement<Q extends Quantity<Q>>(List<Reading<Q>> readings) {

  private static final Measurement<?> NOT_TAKEN = new Measurement<>(List.of());

  /** Keeps its own copy of the readings. */
  public Measurement {
    readings = List.copyOf(readings);
  }

  /** No reading was taken. */
  @SuppressWarnings("unchecked") // an empty measurement holds no quantity of any type
  public static <Q extends Quantity<Q>> Measurement<Q> notTaken() {
    return (Measurement<Q>) NOT_TAKEN;
  }

  /** One reading. */
  public static <Q extends Quantity<Q>> Measurement<Q> of(Q value, Station station, Method method) {
    return new Measurement<>(List.of(Reading.of(value, station, method)));
  }

  /** One reading. */
  public static <Q extends Quantity<Q>> Measurement<Q> of(Reading<Q> reading) {
    return new Measurement<>(List.of(reading));
  }

  /** The same readings and one more. */
  public Measurement<Q> and(Reading<Q> reading) {
    return new Measurement<>(Stream.concat(readings.stream(), Stream.of(reading)).toList());
  }

  /** Whether any reading was taken. */
  public boolean taken() {
    return !readings.isEmpty();
  }
}
