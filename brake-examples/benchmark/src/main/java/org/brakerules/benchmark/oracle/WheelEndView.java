package org.brakerules.benchmark.oracle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;

/**
 * One wheel end as the oracle sees it: what is there, what is missed, and how the brake is built.
 *
 * @param path the name of the wheel end
 * @param layout how the brake is built
 * @param builtOn the day the vehicle was built
 * @param states how the brake is built, by the words of the tables
 * @param partsByKind the parts that are there or known to be missing
 * @param unmentioned the places of parts that the brake has for certain and the job leaves out
 */
record WheelEndView(
    WheelEndPath path,
    Layout layout,
    Optional<LocalDate> builtOn,
    Map<String, String> states,
    Map<PartKind, List<Facts>> partsByKind,
    List<Place> unmentioned) {

  static Map<WheelEndPath, WheelEndView> of(BrakeJob job) {
    Map<WheelEndPath, WheelEndView> ends = new TreeMap<>();
    job.units()
        .forEach(
            unit ->
                unit.axles()
                    .forEach(
                        axle ->
                            axle.wheelEnds()
                                .forEach(
                                    end ->
                                        ends.put(
                                            end.path(),
                                            of(job, end, axle.kind(), unit.builtOn())))));
    return ends;
  }

  private static WheelEndView of(
      BrakeJob job, WheelEnd end, AxleKind axle, Optional<LocalDate> builtOn) {
    Set<Place> expected = new HashSet<>(end.expectedParts(job.scope()));
    Set<Place> unmentioned = new HashSet<>(expected);
    List<Facts> parts = new ArrayList<>();
    for (Part part : end.parts()) {
      unmentioned.remove(part.place());
      if (part.presence() != Presence.NOT_FITTED) {
        parts.add(Facts.of(part, part.presence() == Presence.MISSING));
      } else if (part.partKind().isEssential() && expected.contains(part.place())) {
        parts.add(Facts.of(part.partKind().blank(Tag.missing(part.place())), true));
      }
    }
    return new WheelEndView(
        end.path(),
        end.layout(),
        builtOn,
        States.ofBrake(end.layout(), axle, builtOn),
        parts.stream().collect(Collectors.groupingBy(Facts::kind)),
        unmentioned.stream().sorted().toList());
  }

  Stream<Facts> parts() {
    return partsByKind.values().stream().flatMap(List::stream);
  }

  List<Facts> parts(PartKind kind) {
    return partsByKind.getOrDefault(kind, List.of());
  }

  /** The parts of the kind and station of a part, itself among them; their numbers do not count. */
  Stream<Facts> samePlace(Facts part) {
    return parts(part.kind()).stream().filter(one -> one.part().station() == part.part().station());
  }

  /** How the brake or the axle is, as it is written in a job; empty if not stated. */
  String state(String path) {
    String state = states.get(path);
    if (state == null) {
      throw new IllegalArgumentException("A brake has no " + path + ".");
    }
    return state;
  }
}
