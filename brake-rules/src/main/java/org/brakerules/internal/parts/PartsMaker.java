package org.brakerules.internal.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.model.part.Place;
import org.brakerules.parts.AxleParts;
import org.brakerules.parts.KitCover;
import org.brakerules.parts.PartsList;
import org.brakerules.parts.WheelEndParts;

/** Makes the parts list of a job. */
public final class PartsMaker {

  /**
   * What was made of one axle.
   *
   * @param ends the parts lists of its ends
   * @param parts both together
   * @param linings the friction codes of its linings
   */
  private record MadeAxle(List<WheelEndParts> ends, AxleParts parts, LiningCodes linings) {}

  private final JobDecision decision;
  private final PartsTables tables;
  private final Lines lines;
  private final List<MadeAxle> axles;

  /**
   * Makes everything.
   *
   * @param job the job
   * @param decision the answer to it
   */
  public PartsMaker(BrakeJob job, JobDecision decision, PartsTables tables) {
    this.decision = decision;
    this.tables = tables;
    this.lines = new Lines(tables.all());
    this.axles =
        job.units().stream()
            .sorted(Comparator.comparing(VehicleUnit::name))
            .flatMap(this::axles)
            .toList();
  }

  private Stream<MadeAxle> axles(VehicleUnit unit) {
    return unit.axles().stream()
        .sorted(Comparator.comparing(Axle::number))
        .map(axle -> made(unit, axle));
  }

  /** The parts list. */
  public PartsList list() {
    List<WheelEndParts> ends = axles.stream().flatMap(axle -> axle.ends().stream()).toList();
    return new PartsList(
        decision.ruleBase(),
        decision.reference(),
        decision.date(),
        decision.ruleSet(),
        ends,
        axles.stream().map(MadeAxle::parts).toList(),
        lines.totals(ends));
  }

  /**
   * The parts list with the kits that cover it.
   *
   * @throws IllegalArgumentException if a kit holds what is no item
   */
  public KitCover cover(KitShelf shelf) {
    AxleCoverMaker maker = new AxleCoverMaker(shelf, tables.items());
    return new KitCover(
        list(),
        shelf,
        axles.stream()
            .flatMap(axle -> maker.cover(axle.parts(), axle.ends(), axle.linings()).stream())
            .toList());
  }

  private MadeAxle made(VehicleUnit unit, Axle axle) {
    List<AxleEnd> ends = new ArrayList<>();
    axle.wheelEnds().stream()
        .map(end -> AxleEnd.of(unit, axle, end, decision.decisions()))
        .forEach(ends::add);
    if (ends.size() == 1) {
      ends.add(ends.get(0).partnerNotInspected());
    }
    ends.sort(Comparator.comparing(AxleEnd::path));
    List<HandledParts> handled =
        List.of(handled(ends.get(0), ends.get(1)), handled(ends.get(1), ends.get(0)));
    LiningCodes linings = LiningCodes.of(handled);
    AskedFor asked =
        tables
            .askedFor()
            .of(ends.stream().flatMap(end -> end.decisions().values().stream()).toList());
    List<WheelEndParts> made =
        handled.stream().map(end -> wheelEnd(end, new Matching(linings, asked))).toList();
    return new MadeAxle(
        made, new AxleParts(unit.name(), axle.number(), lines.totals(made)), linings);
  }

  private HandledParts handled(AxleEnd end, AxleEnd other) {
    return HandledParts.of(end, Optional.of(other).filter(AxleEnd::inspected), tables);
  }

  private WheelEndParts wheelEnd(HandledParts handled, Matching matching) {
    AxleEnd end = handled.end();
    List<Place> holds =
        end.decisions().values().stream().filter(Decision::hold).map(Decision::part).toList();
    return new WheelEndParts(
        end.path(),
        end.inspected(),
        handled.reline(),
        holds,
        lines.lines(Pieces.of(handled, tables.quantities(), matching)));
  }
}
