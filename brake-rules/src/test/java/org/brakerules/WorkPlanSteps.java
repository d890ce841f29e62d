package org.brakerules;

import java.util.List;
import org.brakerules.work.Recording;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;

/** Finds the steps of a plan that a test speaks of. */
final class WorkPlanSteps {

  private WorkPlanSteps() {}

  static WorkPlan plan(SoundBrake brake) {
    return BrakeRules.standard().plan(brake.job());
  }

  static List<String> ids(WorkPlan plan) {
    return plan.steps().stream().map(WorkStep::id).toList();
  }

  /** The first step of an id. */
  static WorkStep step(WorkPlan plan, String id) {
    return plan.steps().stream().filter(step -> step.id().equals(id)).findFirst().orElseThrow();
  }

  /** What is written down at a step, by the beginning of its name. */
  static Recording record(WorkPlan plan, String id, String what) {
    return step(plan, id).records().stream()
        .filter(record -> record.what().startsWith(what))
        .findFirst()
        .orElseThrow();
  }
}
