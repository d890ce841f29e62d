package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.Needed.Task;
import org.brakerules.model.decision.NextLook;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;

/** How work goes on at a wheel end where it stops. */
final class WayOut {

  private static final int LOOKS_SHOWN = 6;
  private static final String SEEN = "seen";

  private static final String REMEDY_FIRST =
      "put right what the hold names and what led to it, state the brake as it is then, the new"
          + " parts as new, and ask again";

  /** Nothing is put in without a step: the plan that follows the hold has it, in its turn. */
  private static final String NEW_PARTS_READY =
      "put right what the hold names and what led to it. Of a new part it is enough that it lies"
          + " ready: state it as new and ask again; the next plan puts it in, in its turn";

  private final EndFacts end;
  private final Optional<EndFacts> across;
  private final JobDecision decision;
  private final List<HoldSources.Found> sources;
  private final WaysOut waysOut;
  private final StepTable table;
  private final boolean beforeTeardown;

  WayOut(Stops.StopAt stop, JobDecision decision, StepTable table) {
    this.end = stop.end();
    this.across = stop.across();
    this.decision = decision;
    this.waysOut = table.waysOut();
    this.table = table;
    this.beforeTeardown = stop.isBeforeTeardown();
    this.sources = table.holdSources().of(rules().toList(), seen(end));
  }

  /** What was seen of the parts on hold, and led to it. */
  private static Set<String> seen(EndFacts end) {
    return end.held().stream()
        .flatMap(held -> held.reason().evidence().stream())
        .filter(Evidence.Stated.class::isInstance)
        .map(Evidence.Stated.class::cast)
        .filter(stated -> stated.value().equals(SEEN))
        .map(Evidence.Stated::property)
        .collect(Collectors.toSet());
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    across
        .map(other -> other.end().path() + " is put right first; then ask again")
        .ifPresent(lines::add);
    if (across.isEmpty() || !end.held().isEmpty()) {
      lines.addAll(own());
    }
    return lines;
  }

  private Stream<String> rules() {
    return end.held().stream().map(held -> held.reason().rule());
  }

  private List<String> own() {
    if (end.held().isEmpty()) {
      return List.of("look at what was laid open or disturbed, state it, and ask again");
    }
    List<String> lines = new ArrayList<>();
    found().forEach(lines::add);
    if (!sources.isEmpty()) {
      String looks = looks().distinct().limit(LOOKS_SHOWN).collect(Collectors.joining("; "));
      if (!looks.isEmpty()) {
        lines.add("look for the source: " + looks);
      }
    }
    rules().flatMap(rule -> waysOut.of(rule).stream()).distinct().forEach(lines::add);
    lines.add(newPartsGoInBySteps() ? NEW_PARTS_READY : REMEDY_FIRST);
    return lines;
  }

  /** Not while the source is unknown: whatever it turns out to be may have no step. */
  private boolean newPartsGoInBySteps() {
    Set<PartKind> remedied = EnumSet.noneOf(PartKind.class);
    end.held().forEach(held -> remedied.add(held.part().kind()));
    List<PartKind> led = foundParts().map(one -> one.part().kind()).toList();
    remedied.addAll(led);
    return !beforeTeardown
        && (sources.isEmpty() || !led.isEmpty())
        && remedied.stream().allMatch(kind -> table.putsIn(kind, end.scope()));
  }

  private Stream<Decision> foundParts() {
    return end.decisions().stream()
        .filter(one -> one.reasons().stream().anyMatch(reason -> isSource(one.part(), reason)));
  }

  private Stream<String> found() {
    return end.decisions().stream()
        .flatMap(
            one ->
                one.reasons().stream()
                    .filter(reason -> isSource(one.part(), reason))
                    .map(reason -> found(one, reason)));
  }

  private boolean isSource(Place part, Reason reason) {
    return sources.stream().anyMatch(source -> source.is(reason.rule(), part.station()));
  }

  private static String found(Decision one, Reason reason) {
    return "may be the source, "
        + one.part().inWords()
        + ": "
        + reason.sentence()
        + " "
        + reason.action()
        + " ("
        + reason.rule()
        + ")";
  }

  /** What is not looked at yet of the parts that can be the source, the likeliest part first. */
  private Stream<String> looks() {
    return sources.stream()
        .map(HoldSources.Found::component)
        .distinct()
        .flatMap(
            component ->
                decision.next().stream()
                    .filter(look -> look.part().wheelEnd().equals(end.end().path()))
                    .filter(look -> look.part().kind().id().equals(component)))
        .flatMap(this::look);
  }

  private Stream<String> look(NextLook look) {
    return end.decisions().stream()
        .filter(one -> one.part().equals(look.part()))
        .flatMap(one -> one.needed().stream())
        .filter(needed -> needed.point().equals(look.point()) && needed.task() == Task.LOOK)
        .map(Needed::what)
        .map(what -> look.part().inWords() + ": " + what);
  }
}
