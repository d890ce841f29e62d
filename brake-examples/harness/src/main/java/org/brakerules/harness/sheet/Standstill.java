package org.brakerules.harness.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.work.Stop;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;

/**
 * How a wheel end is left while the plan stops, there or elsewhere. A page that simply ends would
 * leave a caged brake to whoever comes next.
 */
final class Standstill {

  private static final String RAISE = "SECURE-010";
  private static final String CAGE = "SECURE-020";
  private static final String TAKE_OFF = "TEARDOWN-220";
  private static final String BOLT_UP = "ASSEMBLE-350";
  private static final String LOWER = "SET-070";
  private static final String UNCAGE = "SET-020";

  private final WorkPlan plan;
  private final WheelEndPath path;
  private final List<String> ids;

  Standstill(WorkPlan plan, WheelEndPath path) {
    this.plan = plan;
    this.path = path;
    this.ids = plan.forWheelEnd(path).stream().map(WorkStep::id).toList();
  }

  /** Whether the plan stops at another wheel end, and this one waits for it. */
  boolean waits() {
    return !plan.stops().isEmpty()
        && plan.stops().stream().noneMatch(stop -> stop.wheelEnd().equals(path));
  }

  /** Where the plan stops. */
  String elsewhere() {
    return plan.stops().stream()
        .map(Stop::wheelEnd)
        .map(WheelEndPath::toString)
        .collect(Collectors.joining(" and "));
  }

  /** How the wheel end is left, in a sentence each; empty if the plan goes to its end. */
  List<String> leaves() {
    if (plan.stops().isEmpty()) {
      return List.of();
    }
    List<String> left = new ArrayList<>();
    if (isLeft(CAGE, UNCAGE)) {
      left.add(
          (isLeft(TAKE_OFF, BOLT_UP)
                  ? "The spring brake here is off and lies caged"
                  : "The spring brake here stays caged")
              + ": this wheel has no parking brake.");
    }
    if (isLeft(RAISE, LOWER)) {
      left.add("The axle stays on its blocked stands, and the chocks stay.");
    }
    if (!ids.contains(RAISE)) {
      left.add("The axle stays on its wheels: the parking brakes stay set, and the chocks stay.");
    }
    left.add(
        "Nobody moves the vehicle: no brake of it is set or proved until the work goes on, and no air"
            + " comes to any brake. What is read with air up waits until every brake is closed.");
    return left;
  }

  private boolean isLeft(String begun, String ended) {
    return ids.contains(begun) && !ids.contains(ended);
  }
}
