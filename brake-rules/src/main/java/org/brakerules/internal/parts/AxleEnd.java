package org.brakerules.internal.parts;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.brakerules.internal.table.Subject;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.LayoutBuilder;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;

/**
 * One end of an axle, in the job or not.
 *
 * @param path its name
 * @param inspected whether it is in the job
 * @param builtOn the day its unit was built; empty if not stated
 * @param axleKind what its axle does
 * @param layout how its brake is built
 * @param decisions the decisions on its parts; none if it is not in the job
 * @param parts the parts stated of it
 */
record AxleEnd(
    WheelEndPath path,
    boolean inspected,
    Optional<LocalDate> builtOn,
    AxleKind axleKind,
    Layout layout,
    NavigableMap<Place, Decision> decisions,
    Map<Place, Part> parts) {

  static AxleEnd of(VehicleUnit unit, Axle axle, WheelEnd end, List<Decision> all) {
    NavigableMap<Place, Decision> decisions = new TreeMap<>();
    all.stream()
        .filter(decision -> decision.part().wheelEnd().equals(end.path()))
        .forEach(decision -> decisions.put(decision.part(), decision));
    Map<Place, Part> parts =
        end.parts().stream().collect(Collectors.toMap(Part::place, Function.identity()));
    return new AxleEnd(
        end.path(), true, unit.builtOn(), axle.kind(), end.layout(), decisions, parts);
  }

  /** The end across the axle, of which is known only that an axle is built alike at both ends. */
  AxleEnd partnerNotInspected() {
    Layout alike = LayoutBuilder.builder(layout).camshaftHand(Hand.UNKNOWN).build();
    return new AxleEnd(path.partner(), false, builtOn, axleKind, alike, new TreeMap<>(), Map.of());
  }

  /** The parts a brake of this layout has for certain, however far it was taken apart. */
  List<Place> expected() {
    return layout.expectedParts(path, Scope.CAMSHAFT_OUT);
  }

  Part part(Place place) {
    Part stated = parts.get(place);
    return stated == null ? place.kind().blank(Tag.asFound(place)) : stated;
  }

  Subject subject(Place place) {
    return new Subject(builtOn, axleKind, layout, part(place));
  }

  boolean isNew(Place place) {
    Part stated = parts.get(place);
    return stated != null
        && stated.condition() == Condition.NEW
        && stated.presence() == Presence.FITTED;
  }

  boolean isNotFitted(Place place) {
    Part stated = parts.get(place);
    return stated != null && stated.presence() == Presence.NOT_FITTED;
  }
}
