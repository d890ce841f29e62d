package org.brakerules.model.job;

import java.util.ArrayList;
import java.util.List;
import org.brakerules.model.part.Drum;
import org.brakerules.model.part.Hub;
import org.brakerules.model.part.Lining;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Sign;
import org.brakerules.model.reading.Station;

/**
 * The parts of a hub that what is stated of its wheel end leads to. An outboard drum comes off
 * without the hub, so the layout alone asks for none of them.
 */
final class HubParts {

  private HubParts() {}

  /** The places of these parts that a job of the scope lays open; empty if nothing leads there. */
  static List<Place> ledTo(WheelEnd end, Scope scope) {
    List<Place> places = new ArrayList<>();
    boolean oil = false;
    boolean hubOff = false;
    for (Part part : end.parts()) {
      oil |= hasOil(part);
      hubOff |= isHubTakenOff(part, scope);
    }
    if (!oil && !hubOff) {
      return List.of();
    }
    if (oil || hubOff) {
      places.add(end.path().place(PartKind.HUB));
      places.add(end.path().place(PartKind.WHEEL_SEAL));
    }
    if (hubOff) {
      places.add(end.path().place(PartKind.WHEEL_BEARING, Station.INNER));
      places.add(end.path().place(PartKind.WHEEL_BEARING, Station.OUTER));
    }
    return places.stream().filter(place -> scope.reaches(place.kind().laidOpenFrom())).toList();
  }

  /** Thin oil comes from the hub; a drum that is soaked does not say with what. */
  private static boolean hasOil(Part part) {
    return part.presence() == Presence.FITTED && oil(part) == Sign.SEEN;
  }

  private static Sign oil(Part part) {
    if (part instanceof Lining lining) {
      return lining.oilSoaked();
    }
    return part instanceof Drum drum ? drum.soaked() : Sign.NOT_CHECKED;
  }

  private static boolean isHubTakenOff(Part part, Scope scope) {
    return part instanceof Hub && part.presence() == Presence.FITTED && part.tag().disturbed(scope);
  }
}
