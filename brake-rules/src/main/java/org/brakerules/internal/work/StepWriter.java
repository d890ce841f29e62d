package org.brakerules.internal.work;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.work.StepRow.LimitCell;
import org.brakerules.internal.work.StepRow.RecordCell;
import org.brakerules.internal.work.StepRow.Unstated;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.parts.PartsList;
import org.brakerules.work.FittedPart;
import org.brakerules.work.FittedPart.Use;
import org.brakerules.work.LimitToMeet;
import org.brakerules.work.Recording;
import org.brakerules.work.WorkStep;

/** Writes down one step of a plan. */
final class StepWriter {

  private final Site site;
  private final Selection selection;
  private final Needs needs;
  private final Stops stops;
  private final LimitTable limits;
  private final Map<Spot, Integer> numbers;
  private final Set<Place> comingOffAgain;
  private final Set<Place> renewedBesideAnother;
  private final Set<Place> comingAsOneUnit;

  StepWriter(
      Site site,
      Selection selection,
      Needs needs,
      Stops stops,
      LimitTable limits,
      Map<Spot, Integer> numbers,
      PartsList parts) {
    this.site = site;
    this.selection = selection;
    this.needs = needs;
    this.stops = stops;
    this.limits = limits;
    this.numbers = numbers;
    this.comingOffAgain = parts.comingOffAgain();
    this.renewedBesideAnother = parts.renewedBesideAnother();
    this.comingAsOneUnit = parts.comingAsOneUnit();
  }

  /**
   * Writes a step.
   *
   * @param looks the open looks at its wheel end; empty if it is no step of one wheel end
   */
  WorkStep write(Spot spot, Optional<OpenLooks> looks, List<String> details) {
    List<Place> later = looks.map(OpenLooks::partsLater).orElse(List.of());
    StepRow row = spot.row();
    return new WorkStep(
        number(spot),
        row.id(),
        row.phase(),
        row.level(),
        spot.area().on(),
        ifFitted(spot),
        row.text(),
        row.hold() || stops.at(spot).isPresent(),
        row.passesWhen(),
        selection.fitted(spot).stream().map(decision -> fitted(spot, decision, later)).toList(),
        Details.undecided(spot, looks),
        details,
        row.greases(),
        row.keepsDry(),
        row.air(),
        row.cautions(),
        row.records().stream().map(cell -> recording(spot, cell)).toList(),
        needs.of(spot).stream().map(this::number).sorted().toList(),
        selection.of(spot).because(),
        row.source());
  }

  private int number(Spot spot) {
    return Optional.ofNullable(numbers.get(spot)).orElseThrow();
  }

  private Optional<String> ifFitted(Spot spot) {
    List<Match> matches = selection.of(spot).matches();
    if (spot.row().unstated() != Unstated.ASK || matches.stream().anyMatch(Match::certain)) {
      return Optional.empty();
    }
    String facts =
        matches.stream()
            .flatMap(match -> match.unstated().stream())
            .distinct()
            .collect(Collectors.joining(", "));
    boolean ofPart = facts.equals("layout.springBrake") || facts.equals("layout.sensor");
    return Optional.of(
        (ofPart ? "if fitted" : "if it is built so") + ": the layout does not say (" + facts + ")");
  }

  private FittedPart fitted(Spot spot, Decision decision, List<Place> later) {
    EndFacts end = end(decision.part());
    Use use = isRelined(spot, decision) ? Use.RELINED : use(end, decision);
    return new FittedPart(
        decision.part(),
        use == Use.UNDECIDED && later.contains(decision.part()) ? Use.DECIDED_AFTERWARDS : use,
        Reasoning.rules(decision));
  }

  private EndFacts end(Place part) {
    return site.ends().stream()
        .filter(end -> end.end().path().equals(part.wheelEnd()))
        .findFirst()
        .orElseThrow();
  }

  private Use use(EndFacts end, Decision decision) {
    Place part = decision.part();
    boolean stays = decision.disposition().compareTo(Disposition.UNDECIDED) < 0;
    if (stays && part.kind() == PartKind.SHIM && Reasoning.asksForShims(end)) {
      return Use.CHOSEN;
    }
    boolean isNew = end.inspected(part).part().condition() == Condition.NEW;
    if (stays && isNew && comingOffAgain.contains(part)) {
      return Use.NEW_ONCE_MORE;
    }
    if (stays && comingAsOneUnit.contains(part)) {
      return Use.WITH_UNIT;
    }
    if (stays && renewedBesideAnother.contains(part)) {
      return Use.NEW;
    }
    return isNew && decision.disposition() == Disposition.REUSE
        ? Use.INSPECTED_NEW
        : use(decision.disposition());
  }

  private static Use use(Disposition disposition) {
    return switch (disposition) {
      case REUSE -> Use.GOES_BACK;
      case CLEAN -> Use.CLEANED;
      case ADJUST -> Use.ADJUSTED;
      case UNDECIDED -> Use.UNDECIDED;
      case REPLACE -> Use.NEW;
    };
  }

  /** Whether it is a shoe that is fit to go back, and its lining is not. */
  private boolean isRelined(Spot spot, Decision decision) {
    Place shoe = decision.part();
    return shoe.kind() == PartKind.SHOE
        && decision.disposition().compareTo(Disposition.UNDECIDED) < 0
        && site.ends(spot).stream()
            .flatMap(end -> end.decisions().stream())
            .filter(other -> other.disposition() == Disposition.REPLACE)
            .map(Decision::part)
            .anyMatch(
                other ->
                    other.kind() == PartKind.LINING
                        && other.wheelEnd().equals(shoe.wheelEnd())
                        && other.station() == shoe.station());
  }

  private Recording recording(Spot spot, RecordCell cell) {
    List<LimitToMeet> inForce =
        cell.limits().stream().flatMap(limit -> inForce(spot, limit)).distinct().toList();
    boolean makersFigure = cell.makersFigure() || (!cell.limits().isEmpty() && inForce.isEmpty());
    return new Recording(cell.what(), cell.readings(), inForce, makersFigure);
  }

  private Stream<LimitToMeet> inForce(Spot spot, LimitCell limit) {
    return site.ends(spot).stream()
        .flatMap(end -> end.limits(limit.id(), kind(limit.id()), limit.otherwise()).stream());
  }

  private PartKind kind(String limit) {
    return limits.first(limit).map(Limit::part).orElseThrow();
  }
}
