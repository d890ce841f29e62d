package org.brakerules.harness.sheet;

import org.brakerules.BrakeRules;
import org.brakerules.figure.JobFigures;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.parts.PartsList;
import org.brakerules.work.WorkPlan;

/**
 * Everything that a sheet is made of.
 *
 * @param job the job
 * @param decision what becomes of each part
 * @param figures what was worked out
 * @param parts what to order and to keep
 * @param plan the order of work
 */
record SheetMaterial(
    BrakeJob job, JobDecision decision, JobFigures figures, PartsList parts, WorkPlan plan) {

  static SheetMaterial of(BrakeRules rules, BrakeJob job) {
    return new SheetMaterial(
        job, rules.decide(job), rules.figures(job), rules.parts(job), rules.plan(job));
  }
}
