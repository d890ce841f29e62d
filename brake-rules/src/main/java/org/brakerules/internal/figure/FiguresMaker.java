package org.brakerules.internal.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.figure.Figure;
import org.brakerules.figure.WheelEndFigures;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.decide.InspectedPart;
import org.brakerules.internal.decide.InspectedParts;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;

/** Works out the figures of a job. */
public final class FiguresMaker {

  private final BrakeJob job;
  private final List<Bench> benches;
  private final Set<Place> replaced;
  private final Set<Place> good;

  /**
   * Lays out the parts of a job.
   *
   * @param decisions the decisions on them, which say what is replaced
   */
  public FiguresMaker(BrakeJob job, Tables tables, List<Decision> decisions) {
    this.job = job;
    this.benches = benches(job, tables);
    this.replaced = decided(decisions, Set.of(Disposition.REPLACE));
    this.good = decided(decisions, Set.of(Disposition.REUSE, Disposition.CLEAN));
  }

  private static Set<Place> decided(List<Decision> decisions, Set<Disposition> wanted) {
    return decisions.stream()
        .filter(decision -> wanted.contains(decision.disposition()))
        .map(Decision::part)
        .collect(Collectors.toSet());
  }

  /** The figures of each wheel end, in path order. */
  public List<WheelEndFigures> wheelEnds() {
    ShimStock stock = new ShimStock(job.shimsAtHand());
    return benches.stream().map(bench -> figures(bench, stock)).toList();
  }

  /** What was worked out over several wheel ends. */
  public List<Figure> vehicle() {
    return VehicleFigures.of(benches);
  }

  private WheelEndFigures figures(Bench bench, ShimStock stock) {
    LostMotionFigure lostMotion = new LostMotionFigure(bench, replaced);
    List<Figure> figures = new ArrayList<>(MarginFigures.of(bench));
    figures.addAll(StrokeFigures.of(bench));
    figures.addAll(PlayFigures.of(bench));
    lostMotion.figure().ifPresent(figures::add);
    figures.addAll(new ShimFigures(bench, stock, replaced, good).figures());
    figures.addAll(RotationFigures.of(bench));
    figures.addAll(WearFigures.of(bench, replaced));
    figures.addAll(LifeFigures.of(bench));
    figures.addAll(ForceFigures.of(bench));
    return new WheelEndFigures(
        bench.wheelEnd(), MarginFigures.judged(bench).toList(), lostMotion.lostMotion(), figures);
  }

  private static List<Bench> benches(BrakeJob job, Tables tables) {
    Checks checks = Checks.of(tables, job);
    Map<WheelEndPath, List<InspectedPart>> parts =
        InspectedParts.of(job, checks).stream()
            .collect(Collectors.groupingBy(part -> part.part().wheelEnd()));
    return job.wheelEnds()
        .sorted(Comparator.comparing(WheelEnd::path))
        .map(
            end ->
                new Bench(
                    end.path(),
                    end.layout(),
                    parts.getOrDefault(end.path(), List.of()),
                    job.sizes(),
                    job.earlierLinings(),
                    tables.ruleSets().testPressure(job.ruleSet())))
        .toList();
  }
}
