package org.brakerules.model.json;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.part.PartKind;

/**
 * The wheel ends of the job, to see whether a path can name anything in it.
 *
 * @param paths the paths of the wheel ends; empty if they are not known because of a problem
 */
record WheelEndNames(List<String> paths) {

  static WheelEndNames of(List<VehicleUnit> units) {
    return new WheelEndNames(
        units.stream()
            .flatMap(unit -> unit.axles().stream())
            .flatMap(axle -> axle.wheelEnds().stream())
            .map(end -> end.path().toString())
            .toList());
  }

  /** Whether the path is that of a wheel end or of a part it can have, or its beginning. */
  boolean mayCover(String path) {
    return paths.isEmpty() || paths.stream().anyMatch(end -> mayCover(path, end));
  }

  private static boolean mayCover(String path, String wheelEnd) {
    if (path.startsWith(wheelEnd + "/")) {
      return isPart(path.substring(wheelEnd.length() + 1));
    }
    return path.equals(wheelEnd) || wheelEnd.startsWith(path + "/");
  }

  private static boolean isPart(String belowWheelEnd) {
    List<String> steps = Arrays.asList(belowWheelEnd.split("/", -1));
    Optional<PartKind> kind = Names.of(PartKind.class).constant(steps.get(0));
    if (kind.isEmpty() || steps.size() == 1) {
      return kind.isPresent();
    }
    return kind.get().stations().stream().anyMatch(at -> at.id().equals(steps.get(1)));
  }

  /** The path of a wheel end or part of the job, or its beginning. */
  Optional<String> path(Node node, Values values) {
    Optional<String> path = values.text(node);
    if (path.isPresent() && !mayCover(path.get())) {
      values
          .problems()
          .add(
              node,
              "the path of a wheel end or part of this job, or its beginning; its wheel ends are "
                  + Shown.oneOf(paths()));
    }
    return path;
  }
}
