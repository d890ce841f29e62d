package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.brakerules.figure.WheelEndFigures;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.parts.PartsList;
import org.brakerules.work.Stop;
import org.brakerules.work.ToState;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;

/** Makes the order of work of a job from its decisions and figures. */
public final class PlanMaker {

  private final BrakeJob job;
  private final Tables tables;
  private final JobDecision decision;
  private final Site site;
  private final Selection selection;
  private final Map<Area, OpenLooks> looks = new HashMap<>();
  private final Stops stops;
  private final StepTable table;
  private final PartsList parts;

  /**
   * Chooses the steps.
   *
   * @param table the steps there are
   * @param decision the decisions on the job
   * @param figures the figures of its wheel ends
   * @param parts its parts list
   */
  public PlanMaker(
      BrakeJob job,
      Tables tables,
      StepTable table,
      JobDecision decision,
      List<WheelEndFigures> figures,
      PartsList parts) {
    this.parts = parts;
    this.job = job;
    this.tables = tables;
    this.decision = decision;
    this.table = table;
    this.site = new Site(job, tables, table, decision, figures);
    this.selection = new Selection(site);
    site.ends().forEach(this::askForLooks);
    this.stops = new Stops(site, table, selection);
    stops.leaveOut();
  }

  /** The order of work. */
  public WorkPlan plan() {
    Needs needs = new Needs(selection.spots());
    List<Spot> order = needs.inOrder();
    Map<Spot, Integer> numbers = new LinkedHashMap<>();
    order.forEach(spot -> numbers.put(spot, numbers.size() + 1));
    StepWriter writer =
        new StepWriter(site, selection, needs, stops, tables.limits(), numbers, parts);
    Details details =
        new Details(selection, stops, tables.ruleSets().testPressure(job.ruleSet()), numbers);
    List<WorkStep> steps = new ArrayList<>();
    for (Spot spot : order) {
      Optional<OpenLooks> open = Optional.ofNullable(looks.get(spot.area()));
      steps.add(writer.write(spot, open, details.of(spot, open)));
    }
    return new WorkPlan(
        decision.ruleBase(),
        decision.reference(),
        decision.date(),
        decision.ruleSet(),
        decision.scope(),
        cautions(steps),
        stops(numbers),
        parts.otherEnds(),
        toState(numbers),
        steps);
  }

  /** What fits a part that is not decided waits until it is. */
  private void askForLooks(EndFacts end) {
    OpenLooks open = new OpenLooks(end, selection.of(end), decision, tables);
    looks.put(end.area(), open);
    if (!open.partsNow().isEmpty()) {
      selection.add(end, Trigger.Kind.UNDECIDED, "parts of this wheel end are undecided");
    }
    if (!open.partsLater().isEmpty()) {
      selection.add(
          end,
          Trigger.Kind.UNDECIDED_UNTIL_PROOF,
          "only the work or its proof shows what some parts need");
    }
    List<Spot> ofEnd = selection.of(end);
    ofEnd.stream()
        .filter(spot -> spot.row().isTriggeredBy(Trigger.Kind.UNDECIDED))
        .forEach(
            decide ->
                ofEnd.stream()
                    .filter(spot -> spot.row().rank() > decide.row().rank())
                    .filter(selection::fitsUndecided)
                    .forEach(spot -> spot.addNeed(decide)));
  }

  /** Those of the steps, and those that hold for all work of this scope. */
  private List<Caution> cautions(List<WorkStep> steps) {
    Set<Caution> of = new LinkedHashSet<>(decision.cautions());
    steps.forEach(step -> of.addAll(step.cautions()));
    return List.copyOf(of);
  }

  private List<Stop> stops(Map<Spot, Integer> numbers) {
    return stops.all().stream()
        .map(
            stop ->
                new Stop(
                    stop.end().end().path(),
                    Optional.ofNullable(numbers.get(stop.spot())).orElseThrow(),
                    stop.why(),
                    new WayOut(stop, decision, table).lines()))
        .toList();
  }

  private List<ToState> toState(Map<Spot, Integer> numbers) {
    List<ToState> toState = new ArrayList<>();
    selection
        .unstated()
        .forEach(
            (end, facts) ->
                facts.forEach(
                    (fact, spots) ->
                        toState.add(
                            new ToState(
                                end.end().path(),
                                fact,
                                spots.stream()
                                    .flatMap(
                                        spot -> Optional.ofNullable(numbers.get(spot)).stream())
                                    .sorted()
                                    .toList()))));
    return toState.stream()
        .sorted(Comparator.comparing(ToState::wheelEnd).thenComparing(ToState::fact))
        .toList();
  }
}
