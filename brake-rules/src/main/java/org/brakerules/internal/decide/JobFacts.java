package org.brakerules.internal.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.internal.fact.BeyondLimit;
import org.brakerules.internal.fact.Brake;
import org.brakerules.internal.fact.Disturbed;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.Fitted;
import org.brakerules.model.part.Part;

/** Everything the rules are told of a job before the first of them speaks. */
final class JobFacts {

  private final BrakeJob job;
  private final Tables tables;

  JobFacts(BrakeJob job, Tables tables) {
    this.job = job;
    this.tables = tables;
  }

  List<Object> of(List<InspectedPart> parts) {
    List<Object> facts = new ArrayList<>();
    for (VehicleUnit unit : job.units()) {
      Fitted automaticAdjuster = automaticAdjuster(unit);
      for (Axle axle : unit.axles()) {
        axle.wheelEnds().forEach(end -> facts.add(brake(axle, end, automaticAdjuster)));
        axle.wheelEnds().forEach(end -> facts.addAll(Contradictions.of(end)));
        facts.addAll(AcrossAxle.differences(axle));
      }
    }
    for (InspectedPart part : parts) {
      if (part.inspected()) {
        facts.add(part.part());
        addMarkers(part, facts);
      }
    }
    return facts;
  }

  private Brake brake(Axle axle, WheelEnd end, Fitted automaticAdjuster) {
    return new Brake(end.path(), axle.kind(), end.layout(), job.scope(), automaticAdjuster);
  }

  /** What the law of the job says of a vehicle built on that day. */
  private Fitted automaticAdjuster(VehicleUnit unit) {
    Optional<LocalDate> from = tables.ruleSets().automaticAdjustersFrom(job.ruleSet());
    if (from.isEmpty()) {
      return Fitted.NO;
    }
    return unit.builtOn()
        .map(built -> built.isBefore(from.get()) ? Fitted.NO : Fitted.YES)
        .orElse(Fitted.UNKNOWN);
  }

  private void addMarkers(InspectedPart inspected, List<Object> facts) {
    Part part = inspected.part();
    for (Check check : inspected.checks(CheckStatus.BEYOND)) {
      facts.add(new BeyondLimit(check.limitId(), part.condition(), check));
    }
    if (part.tag().disturbed(job.scope())) {
      facts.add(new Disturbed(part.place(), part.condition()));
    }
  }
}
