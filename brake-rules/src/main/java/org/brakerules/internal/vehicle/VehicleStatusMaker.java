package org.brakerules.internal.vehicle;

import java.util.List;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.vehicle.Criterion.DefectiveShare;
import org.brakerules.internal.vehicle.Criterion.SteerAxleAlike;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.vehicle.AxleStatus;
import org.brakerules.vehicle.BrakeCount;
import org.brakerules.vehicle.CriterionStatus;
import org.brakerules.vehicle.VehicleStatus;

/** Puts together what axles and vehicle of a job come to. */
public final class VehicleStatusMaker {

  private final Tables tables;
  private final List<Criterion> criteria;

  /** Reads the criteria beside the tables of the rule base. */
  public VehicleStatusMaker(Tables tables) {
    this.tables = tables;
    this.criteria = CriteriaTable.load(tables);
  }

  /** The status of the vehicle of a job. */
  public VehicleStatus of(BrakeJob job, JobDecision decision) {
    Strokes strokes = Strokes.of(job, tables);
    List<AxleStatus> axles = new AxleStatuses(strokes).of(job);
    List<BrakeCount> brakes =
        new BrakeCounts(tables, job.ruleSet(), strokes).of(axles, decision.decisions());
    return new VehicleStatus(
        decision.ruleBase(),
        job.reference(),
        job.date(),
        job.ruleSet(),
        axles,
        brakes,
        criteria.stream()
            .filter(one -> one.holdsUnder(job.ruleSet()))
            .map(one -> status(one, axles, brakes))
            .toList());
  }

  private static CriterionStatus status(
      Criterion criterion, List<AxleStatus> axles, List<BrakeCount> brakes) {
    if (criterion.measure() instanceof DefectiveShare share) {
      ShareOfBrakes counted = new ShareOfBrakes(share, brakes);
      return status(criterion, counted.answer(), counted.finding(), counted.open());
    }
    SteerAxles held = new SteerAxles((SteerAxleAlike) criterion.measure(), axles);
    return status(criterion, held.answer(), held.finding(), held.open());
  }

  private static CriterionStatus status(
      Criterion criterion, CriterionStatus.Answer answer, String finding, List<String> open) {
    return new CriterionStatus(
        criterion.id(),
        criterion.title(),
        answer,
        criterion.says(),
        finding,
        open,
        criterion.ask(),
        criterion.source());
  }
}
