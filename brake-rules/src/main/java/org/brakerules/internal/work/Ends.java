package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.brakerules.figure.Figure;
import org.brakerules.figure.WheelEndFigures;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.decide.InspectedPart;
import org.brakerules.internal.decide.InspectedParts;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.work.WorkLevel;

/** Gathers what is known of each wheel end of a job. */
final class Ends {

  private final BrakeJob job;
  private final StepTable table;
  private final JobDecision decision;
  private final List<WheelEndFigures> figures;
  private final Checks checks;
  private final List<InspectedPart> parts;
  private final List<WheelEndPath> paths;
  private final List<String> axles;

  Ends(
      BrakeJob job,
      Tables tables,
      StepTable table,
      JobDecision decision,
      List<WheelEndFigures> figures) {
    this.job = job;
    this.table = table;
    this.decision = decision;
    this.figures = figures;
    this.checks = Checks.of(tables, job);
    this.parts = InspectedParts.of(job, checks);
    this.paths = job.wheelEnds().map(WheelEnd::path).sorted().toList();
    this.axles = paths.stream().map(Ends::axle).distinct().toList();
  }

  /** The wheel ends in path order. */
  List<EndFacts> all() {
    List<EndFacts> ends = new ArrayList<>();
    for (VehicleUnit unit : job.units()) {
      for (Axle axle : unit.axles()) {
        axle.wheelEnds().forEach(end -> ends.add(facts(unit, axle.kind(), end)));
      }
    }
    ends.sort(Comparator.comparing(end -> end.end().path()));
    return List.copyOf(ends);
  }

  /** The path of the axle of a wheel end, such as {@code tractor/axle2}. */
  static String axle(WheelEndPath path) {
    String end = path.toString();
    return end.substring(0, end.lastIndexOf('/'));
  }

  private EndFacts facts(VehicleUnit unit, AxleKind kind, WheelEnd end) {
    List<Decision> decisions =
        decision.decisions().stream()
            .filter(one -> one.part().wheelEnd().equals(end.path()))
            .toList();
    return new EndFacts(
        area(end.path()),
        end,
        kind,
        unit.builtOn(),
        decisions,
        parts.stream().filter(part -> part.part().wheelEnd().equals(end.path())).toList(),
        figures(end.path()),
        checks,
        job.scope(),
        EndFacts.depth(job.scope(), decisions, table));
  }

  private Area area(WheelEndPath path) {
    return new Area(
        WorkLevel.WHEEL_END,
        path.toString(),
        axles.indexOf(axle(path)) + 1,
        paths.indexOf(path) + 1);
  }

  private List<Figure> figures(WheelEndPath path) {
    Optional<WheelEndFigures> ofEnd =
        figures.stream().filter(one -> one.wheelEnd().equals(path)).findFirst();
    return ofEnd.map(WheelEndFigures::figures).orElse(List.of());
  }
}
