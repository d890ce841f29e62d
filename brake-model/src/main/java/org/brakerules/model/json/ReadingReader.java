package org.brakerules.model.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/**
 * Reads what was measured of one property: one reading, or several in an array.
 *
 * @param property the property
 * @param own the station of a reading that states none
 */
record ReadingReader<Q extends Quantity<Q>>(
    Property.Measured<Q> property, Station own, Values values) {

  /** No air system holds more; a larger pressure is a slip of the pen. */
  private static final Optional<Pressure> MOST_RESERVOIR_PRESSURE =
      Optional.of(Pressure.parse("300 psi"));

  /** The readings that have no problem. */
  Measurement<Q> measurement(Node node) {
    if (!(node instanceof Node.Items items)) {
      return new Measurement<>(reading(node).stream().toList());
    }
    if (items.values().isEmpty()) {
      values
          .problems()
          .add(node, "at least one reading; leave the field out if it was not measured");
    }
    List<Reading<Q>> readings = new ArrayList<>();
    items.values().forEach(item -> reading(item).ifPresent(readings::add));
    return new Measurement<>(readings);
  }

  private Optional<Reading<Q>> reading(Node node) {
    return Fields.of(node, "a reading: an object with value, at and method", values.problems())
        .flatMap(this::reading);
  }

  private Optional<Reading<Q>> reading(Fields fields) {
    Optional<Node> written = fields.required("value", "the reading with its unit");
    Optional<Q> value = written.flatMap(node -> quantity(node));
    Station station = fields.optional("at").flatMap(this::station).orElse(own);
    Method method = fields.optional("method").flatMap(this::method).orElse(Method.UNKNOWN);
    Optional<Q> uncertainty = fields.optional("uncertainty").flatMap(this::quantity);
    Optional<Pressure> pressure = fields.optional("reservoirPressure").flatMap(this::pressure);
    Moment moment = fields.optional("moment").flatMap(this::moment).orElse(Moment.UNKNOWN);
    fields.refuseOthers();
    return value.map(
        read ->
            new Reading<>(
                read,
                ((Node.Text) written.orElseThrow()).value(),
                station,
                method,
                uncertainty,
                pressure,
                moment));
  }

  private Optional<Q> quantity(Node node) {
    return values.quantity(node, property.type(), property.atMost());
  }

  private Optional<Station> station(Node node) {
    return values.choice(node, Names.of(Station.class));
  }

  private Optional<Method> method(Node node) {
    return values.choice(node, Names.of(Method.class));
  }

  private Optional<Moment> moment(Node node) {
    return values.choice(node, Names.of(Moment.class));
  }

  private Optional<Pressure> pressure(Node node) {
    return values.quantity(node, Pressure.class, MOST_RESERVOIR_PRESSURE);
  }
}
