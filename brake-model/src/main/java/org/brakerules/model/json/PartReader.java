package org.brakerules.model.json;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Disturbance;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;

/** Reads the parts of one wheel end. */
final class PartReader {

  private static final Map<PartKind, Stations> STATIONS =
      Stream.of(PartKind.values())
          .filter(PartKind::hasStations)
          .collect(Collectors.toUnmodifiableMap(Function.identity(), Stations::of));

  private final WheelEndPath wheelEnd;
  private final Values values;
  private final Once<Place> once;

  /** The stations of a kind of part, and how a message asks for one. */
  private record Stations(Names<Station> names, String expected) {

    static Stations of(PartKind kind) {
      Names<Station> names = Names.of(kind.stations());
      return new Stations(names, "its station: " + Shown.oneOf(names.all()));
    }
  }

  PartReader(WheelEndPath wheelEnd, Values values) {
    this.wheelEnd = wheelEnd;
    this.values = values;
    this.once = new Once<>(values.problems());
  }

  /** Reads the fields of one part. */
  Supplier<Part> part(Node node, Fields fields) {
    Optional<PartKind> kind =
        fields
            .required("part", "the kind of part, such as \"camshaft\"")
            .flatMap(name -> values.choice(name, Names.of(PartKind.class)));
    if (kind.isEmpty()) {
      // Without its kind nothing is known of the other fields.
      fields.acceptOthers();
    }
    return kind.map(known -> part(node, fields, known))
        .orElse(
            () -> {
              throw new AssertionError("A part without kind has a problem and is not built.");
            });
  }

  private Supplier<Part> part(Node node, Fields fields, PartKind kind) {
    Optional<Place> place = place(fields, kind);
    place.ifPresent(known -> once.add(known, node, belowWheelEnd(known), howOften(kind)));
    Tag tag =
        new Tag(
            place.orElseGet(() -> wheelEnd.place(kind, kind.stations().iterator().next())),
            choice(fields, "presence", Presence.FITTED),
            choice(fields, "condition", Condition.AS_FOUND),
            choice(fields, "disturbance", Disturbance.BY_SCOPE));
    RecordShape<?> shape = RecordShape.of(kind.recordType().asSubclass(Record.class));
    Supplier<? extends Record> part = shape.readTagged(tag, fields, values);
    return () -> (Part) part.get();
  }

  private Optional<Place> place(Fields fields, PartKind kind) {
    Optional<Station> station = station(fields, kind);
    Optional<Node> written = fields.optional("number");
    Optional<Integer> number =
        fields.has("number")
            ? written.flatMap(it -> values.count(it, Place.MOST_OF_A_KIND))
            : Optional.of(1);
    return station.flatMap(at -> number.flatMap(it -> place(written, kind, at, it)));
  }

  private Optional<Place> place(Optional<Node> written, PartKind kind, Station at, int number) {
    if (number > kind.mostAtOnePlace()) {
      written.ifPresent(node -> values.problems().add(node, howOften(kind)));
      return Optional.empty();
    }
    return Optional.of(new Place(wheelEnd, kind, at, number));
  }

  private static String howOften(PartKind kind) {
    return kind.mostAtOnePlace() == 1
        ? "one " + kind.inWords() + " of a wheel end: the one that is to go back, as found or new"
        : "each part once; number parts of one kind and station 1, 2, 3";
  }

  private Optional<Station> station(Fields fields, PartKind kind) {
    Stations stations = STATIONS.get(kind);
    if (stations != null) {
      return fields
          .required("station", stations.expected())
          .flatMap(node -> values.choice(node, stations.names()));
    }
    fields
        .optional("station")
        .ifPresent(
            node ->
                values
                    .problems()
                    .add(node, "no station, since a wheel end has one " + kind.inWords()));
    return Optional.of(Station.WHOLE_PART);
  }

  private <E extends Enum<E>> E choice(Fields fields, String name, E unstated) {
    return fields
        .optional(name)
        .flatMap(node -> values.choice(node, Names.of(unstated.getDeclaringClass())))
        .orElse(unstated);
  }

  private String belowWheelEnd(Place place) {
    return place.toString().substring(wheelEnd.toString().length() + 1);
  }
}
