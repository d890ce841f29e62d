package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.table.Subject;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Tag;

/** Every part of a job: those it mentions, and those its layouts imply. */
public final class InspectedParts {

  private static final Comparator<InspectedPart> BY_PLACE =
      Comparator.comparing(part -> part.part().place());

  private static final int USUAL_NUMBER = 50;

  private final BrakeJob job;
  private final Checks checks;

  private InspectedParts(BrakeJob job, Checks checks) {
    this.job = job;
    this.checks = checks;
  }

  /** All parts in path order, each held against its limits. */
  public static List<InspectedPart> of(BrakeJob job, Checks checks) {
    return new InspectedParts(job, checks).all();
  }

  private List<InspectedPart> all() {
    List<InspectedPart> parts = new ArrayList<>(USUAL_NUMBER);
    for (VehicleUnit unit : job.units()) {
      for (Axle axle : unit.axles()) {
        for (WheelEnd end : axle.wheelEnds()) {
          addParts(unit, axle, end, parts);
        }
      }
    }
    parts.sort(BY_PLACE);
    return parts;
  }

  private void addParts(VehicleUnit unit, Axle axle, WheelEnd end, List<InspectedPart> parts) {
    List<Place> expected = end.expectedParts(job.scope());
    Set<Place> mentioned = new HashSet<>();
    for (Part part : end.parts()) {
      mentioned.add(part.place());
      Optional<Part> onTheBench = onTheBench(part, expected);
      if (onTheBench.isPresent()) {
        parts.add(inspected(subject(unit, axle, end, onTheBench.get()), true));
      }
    }
    for (Place place : expected) {
      if (!mentioned.contains(place)) {
        Part blank = place.kind().blank(Tag.asFound(place));
        parts.add(inspected(subject(unit, axle, end, blank), false));
      }
    }
  }

  private static Subject subject(VehicleUnit unit, Axle axle, WheelEnd end, Part part) {
    return new Subject(unit.builtOn(), axle.kind(), end.layout(), part);
  }

  /** A part no brake works without cannot be stated away: "not fitted" then means missing. */
  private static Optional<Part> onTheBench(Part part, List<Place> expected) {
    if (part.presence() != Presence.NOT_FITTED) {
      return Optional.of(part);
    }
    return part.partKind().isEssential() && expected.contains(part.place())
        ? Optional.of(part.partKind().blank(Tag.missing(part.place())))
        : Optional.empty();
  }

  private InspectedPart inspected(Subject subject, boolean mentioned) {
    return new InspectedPart(subject, mentioned, checks.of(subject));
  }
}
