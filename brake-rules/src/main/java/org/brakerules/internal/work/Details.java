package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.calc.Working;
import org.brakerules.figure.Figure;
import org.brakerules.internal.table.TestPressure;
import org.brakerules.internal.work.StepRow.Tells;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.part.CamshaftSeal;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.SealKind;
import org.brakerules.work.WorkLevel;
import org.brakerules.work.WorkPhase;

/** What a step is about in a job, in a line each. */
final class Details {

  private static final String SHIMS = "end-play.shims";

  private static final String AN_AXLE_AT_A_TIME =
      "where these are all its axles stop here: a plan for each, the others on their wheels";

  private final Selection selection;
  private final Stops stops;
  private final Optional<TestPressure> pressure;
  private final Map<Spot, Integer> numbers;

  Details(
      Selection selection,
      Stops stops,
      Optional<TestPressure> pressure,
      Map<Spot, Integer> numbers) {
    this.numbers = numbers;
    this.selection = selection;
    this.stops = stops;
    this.pressure = pressure;
  }

  /**
   * The lines of one step.
   *
   * @param looks the open looks at its wheel end; empty if it is no step of one wheel end
   */
  List<String> of(Spot spot, Optional<OpenLooks> looks) {
    List<String> lines = new ArrayList<>();
    stops.at(spot).ifPresent(stop -> lines.addAll(stop.why()));
    StepRow row = spot.row();
    if (row.tells(Tells.TEST_PRESSURE)) {
      pressure.map(one -> "it counts only " + one.inWords()).ifPresent(lines::add);
    }
    if (row.tells(Tells.RAISED)) {
      lines.addAll(raised());
    }
    for (Match match : selection.of(spot).matches()) {
      match.parts().stream()
          .filter(decision -> isToldAt(spot, match.end(), decision.part().kind()))
          .forEach(decision -> lines.addAll(actions(row, decision, match.end())));
      if (row.tells(Tells.SEALS)) {
        lines.addAll(seals(match));
      }
      if (row.tells(Tells.SHIMS)) {
        match.end().figures().forEach(figure -> lines.addAll(shims(figure)));
      }
    }
    if (row.tells(Tells.LOOKS)) {
      looks.ifPresent(open -> lines.addAll(open.now(numbers)));
    }
    if (row.tells(Tells.LATE_LOOKS)) {
      looks.ifPresent(open -> lines.addAll(open.later(numbers)));
    }
    return lines.stream().distinct().toList();
  }

  /** Raising it is all that is done to an axle to secure it. */
  private List<String> raised() {
    List<String> axles =
        selection.inOrder().stream()
            .filter(spot -> spot.row().phase() == WorkPhase.SECURE)
            .filter(spot -> spot.row().level() == WorkLevel.AXLE)
            .map(spot -> spot.area().on())
            .distinct()
            .toList();
    if (axles.isEmpty()) {
      return List.of();
    }
    String raised = "this plan raises " + String.join(", ", axles);
    return axles.size() == 1 ? List.of(raised) : List.of(raised, AN_AXLE_AT_A_TIME);
  }

  /**
   * A repair is told where it is made, and not again wherever the part only brought a step along;
   * one that no step is made for is told at each that it brought.
   */
  private boolean isToldAt(Spot spot, EndFacts end, PartKind kind) {
    return isRepaired(spot.row(), kind)
        || selection.of(end).stream().noneMatch(other -> isRepaired(other.row(), kind));
  }

  private static boolean isRepaired(StepRow row, PartKind kind) {
    return row.forParts().stream().anyMatch(condition -> condition.kind().equals(Optional.of(kind)))
        && switch (row.phase()) {
          case PREPARE -> true;
          case ASSEMBLE ->
              kind == PartKind.CAMSHAFT ? row.tells(Tells.SHIMS) : row.fits().contains(kind);
          case SET -> kind == PartKind.SLACK_ADJUSTER;
          default -> false;
        };
  }

  /** The undecided parts that a step decides. */
  static List<Place> undecided(Spot spot, Optional<OpenLooks> looks) {
    if (spot.row().tells(Tells.LOOKS)) {
      return looks.map(OpenLooks::partsNow).orElse(List.of());
    }
    return spot.row().tells(Tells.LATE_LOOKS)
        ? looks.map(OpenLooks::partsLater).orElse(List.of())
        : List.of();
  }

  /** What is done to a part at a step that is there to put parts right. */
  private static List<String> actions(StepRow row, Decision decision, EndFacts end) {
    return row.forParts().stream()
        .filter(condition -> condition.isMetBy(decision, end))
        .flatMap(
            condition ->
                decision.reasons().stream()
                    .filter(reason -> condition.asksFor(reason.verdict(), reason.rule())))
        .filter(reason -> !reason.action().isEmpty())
        .map(reason -> action(decision, reason))
        .toList();
  }

  private static String action(Decision decision, Reason reason) {
    return decision.part().inWords() + ": " + reason.action() + " (" + reason.rule() + ")";
  }

  /** Of one lip the step itself says all there is. */
  private static List<String> seals(Match match) {
    return match.parts().stream()
        .map(decision -> match.end().inspected(decision.part()).part())
        .map(CamshaftSeal.class::cast)
        .filter(seal -> seal.kind() != SealKind.ONE_LIP)
        .map(seal -> seal.place().inWords() + ": " + direction(seal.kind()))
        .toList();
  }

  private static String direction(SealKind kind) {
    return switch (kind) {
      case ONE_LIP -> "its lip counts";
      case MAIN_AND_DUST_LIP -> "the main lip counts";
      case O_RING -> "an O-ring, no direction";
      case UNKNOWN -> "state its kind; an O-ring has no direction, of two lips the main lip counts";
    };
  }

  private static List<String> shims(Figure figure) {
    Working working = figure.working();
    if (!working.id().equals(SHIMS)) {
      return List.of();
    }
    String stack = figure.about().substring(figure.about().lastIndexOf('/') + 1).replace('-', ' ');
    String answer =
        working.results().isEmpty()
            ? "not worked out, for want of the " + String.join("; ", working.missing())
            : working.results().stream()
                .map(one -> one.name() + " " + one.value())
                .collect(Collectors.joining("; "));
    return List.of("shims at the " + stack + ": " + answer);
  }
}
