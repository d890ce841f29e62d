package org.brakerules.internal.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.internal.table.Point.Brake;
import org.brakerules.internal.table.Point.Demand;
import org.brakerules.internal.table.Point.Finds;
import org.brakerules.internal.table.Point.Owner;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;
import org.brakerules.model.reading.Station;

/** All inspection points of the rule base. */
public final class PointTable {

  private static final String OF_LAYOUT = "layout.";
  private static final String OF_VEHICLE = "vehicle.";

  private final Map<String, Point> byId = new LinkedHashMap<>();
  private final Map<PartKind, List<Point>> byKind = new EnumMap<>(PartKind.class);

  PointTable(Iterable<Row> rows) {
    for (Row row : rows) {
      Point point = read(row);
      if (byId.put(point.id(), point) != null) {
        throw row.mistake("point \"" + point.id() + "\" is there twice");
      }
      byKind.computeIfAbsent(point.part(), kind -> new ArrayList<>()).add(point);
    }
  }

  /** The ids of all points. */
  public Collection<String> ids() {
    return byId.keySet();
  }

  /** All points, in the order of the tables. */
  public Collection<Point> points() {
    return byId.values();
  }

  /** Finds a point by its id. */
  public Optional<Point> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** The points of one kind of part, in the order of its table. */
  public List<Point> of(PartKind kind) {
    return byKind.getOrDefault(kind, List.of());
  }

  private static Point read(Row row) {
    PartKind kind =
        row.known(row.required("part"), "kind of part", PartKind::byId, Names.all(PartKind.class));
    String name = row.required("property");
    Owner owner = owner(name);
    return new Point(
        row.required("id"),
        kind,
        property(row, kind, owner, name),
        owner,
        row.optional("at")
            .map(at -> row.known(at, "station", Station::byId, Names.all(Station.class))),
        constant(row, "needed-from", Scope.class),
        Selector.parse(row, "applies-to", kind),
        constant(row, "needed", Demand.class),
        constant(row, "brake", Brake.class),
        constant(row, "finds", Finds.class),
        row.text("instrument"),
        row.required("how"));
  }

  private static Owner owner(String name) {
    if (name.startsWith(OF_LAYOUT)) {
      return Owner.LAYOUT;
    }
    return name.startsWith(OF_VEHICLE) ? Owner.VEHICLE : Owner.PART;
  }

  private static Property property(Row row, PartKind kind, Owner owner, String name) {
    return switch (owner) {
      case PART -> part(row, kind, name);
      case LAYOUT -> layout(row, name.substring(OF_LAYOUT.length()));
      case VEHICLE -> vehicle(row, name.substring(OF_VEHICLE.length()));
    };
  }

  private static Property part(Row row, PartKind kind, String name) {
    return row.known(
        name,
        "property of a " + kind.inWords(),
        one -> Property.of(kind, one),
        Property.names(kind.recordType()));
  }

  private static Property layout(Row row, String name) {
    return row.known(
        name,
        "property of a layout",
        one -> Property.of(Layout.class, one),
        Property.names(Layout.class));
  }

  private static Property vehicle(Row row, String name) {
    return row.known(
        name,
        "property of a vehicle",
        one -> Property.of(VehicleUnit.class, one).filter(found -> one.equals("builtOn")),
        List.of("builtOn"));
  }

  private static <E extends Enum<E>> E constant(Row row, String column, Class<E> type) {
    return row.known(row.required(column), column, name -> Names.find(type, name), Names.all(type));
  }
}
