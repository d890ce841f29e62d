package org.brakerules.benchmark.oracle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Tag;
import org.jspecify.annotations.Nullable;

/** One wheel end as the oracle sees it: how the brake is built, what is there, what is missed. */
final class WheelEndView {

  private final Layout layout;
  private final AxleKind axle;
  private final Optional<LocalDate> builtOn;
  private final long unstated;
  private final Map<PartKind, List<Facts>> parts = new EnumMap<>(PartKind.class);
  private final Map<PartKind, Renewal> renewals = new EnumMap<>(PartKind.class);
  private final List<Facts> unmentioned = new ArrayList<>();
  private @Nullable WheelEndView across;

  WheelEndView(BrakeJob job, WheelEnd end, AxleKind axle, Optional<LocalDate> builtOn) {
    this.layout = end.layout();
    this.axle = axle;
    this.builtOn = builtOn;
    this.unstated = readUnstated();
    List<Place> expected = end.expectedParts(job.scope());
    List<Place> notFitted = new ArrayList<>();
    for (Part part : end.parts()) {
      if (part.presence() == Presence.NOT_FITTED) {
        notFitted.add(part.place());
      }
      lay(part, expected);
    }
    for (Place place : expected) {
      if (!isLaid(place) && !notFitted.contains(place)) {
        unmentioned.add(new Facts(this, place.kind().blank(Tag.asFound(place)), false, false));
      }
    }
  }

  /** A part no brake works without cannot be stated away: "not fitted" then means missing. */
  private void lay(Part part, List<Place> expected) {
    if (part.presence() != Presence.NOT_FITTED) {
      lay(new Facts(this, part, part.presence() == Presence.MISSING, true));
    } else if (part.partKind().isEssential() && expected.contains(part.place())) {
      lay(new Facts(this, part.partKind().blank(Tag.missing(part.place())), true, true));
    }
  }

  private void lay(Facts part) {
    parts.computeIfAbsent(part.kind(), kind -> new ArrayList<>(2)).add(part);
  }

  private boolean isLaid(Place place) {
    for (Facts part : parts(place.kind())) {
      if (part.station() == place.station() && part.place().number() == place.number()) {
        return true;
      }
    }
    return false;
  }

  private long readUnstated() {
    long set = 0;
    for (int i = 0; i < BrakeState.ALL.size(); i++) {
      set |= BrakeState.isUnstated(BrakeState.ALL.get(i).read().apply(this)) ? 1L << i : 0;
    }
    return set;
  }

  void meet(WheelEndView other) {
    across = other;
  }

  /** What is known of the replacement of a kind of part. */
  Renewal renewal(PartKind kind) {
    return renewals.computeIfAbsent(kind, one -> new Renewal());
  }

  Layout layout() {
    return layout;
  }

  AxleKind axle() {
    return axle;
  }

  /** The day the vehicle was built. */
  Optional<LocalDate> builtOn() {
    return builtOn;
  }

  /** What the job does not state of the brake, by the numbers of {@link BrakeState#ALL}. */
  long unstated() {
    return unstated;
  }

  /** The wheel end across the axle, if it is in the job. */
  @Nullable WheelEndView across() {
    return across;
  }

  /** The parts that are there or known to be missing. */
  Iterable<List<Facts>> parts() {
    return parts.values();
  }

  List<Facts> parts(PartKind kind) {
    return parts.getOrDefault(kind, List.of());
  }

  /** The parts that the brake has for certain and the job leaves out. */
  List<Facts> unmentioned() {
    return unmentioned;
  }
}
