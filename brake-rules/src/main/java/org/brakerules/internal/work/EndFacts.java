package org.brakerules.internal.work;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.brakerules.figure.Figure;
import org.brakerules.internal.check.AppliedLimit;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.decide.InspectedPart;
import org.brakerules.internal.table.Subject;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Tag;
import org.brakerules.work.LimitToMeet;

/**
 * What is known of one wheel end.
 *
 * @param area the wheel end among those of the job
 * @param end the wheel end
 * @param axleKind what its axle does
 * @param builtOn the day its unit was built; empty if not stated
 * @param decisions the decisions on its parts
 * @param parts its parts
 * @param figures its figures
 * @param checks the limits of the job
 * @param scope how far it was taken apart for the inspection
 * @param depth how far it must be taken apart for the work
 */
record EndFacts(
    Area area,
    WheelEnd end,
    AxleKind axleKind,
    Optional<LocalDate> builtOn,
    List<Decision> decisions,
    List<InspectedPart> parts,
    List<Figure> figures,
    Checks checks,
    Scope scope,
    Scope depth) {

  /** A wheel end on hold is taken apart no further than it is. */
  static Scope depth(Scope scope, List<Decision> decisions, StepTable table) {
    if (decisions.stream().anyMatch(Decision::hold)) {
      return scope;
    }
    return decisions.stream()
        .map(decision -> depth(decision, table))
        .max(Comparator.naturalOrder())
        .filter(deepest -> !scope.reaches(deepest))
        .orElse(scope);
  }

  /** How far a brake is taken apart to carry out a decision. */
  static Scope depth(Decision decision, StepTable table) {
    return switch (decision.disposition()) {
      case REPLACE -> table.depth(decision.part().kind());
      case CLEAN, ADJUST -> decision.part().kind().laidOpenFrom();
      case REUSE, UNDECIDED -> Scope.WHEEL_ON;
    };
  }

  /** The brake itself, for a selector that asks for nothing of a part. */
  Subject subject() {
    return subject(PartKind.CAMSHAFT);
  }

  private Subject subject(PartKind kind) {
    Place place = new Place(end.path(), kind, kind.stations().iterator().next(), 1);
    return new Subject(builtOn, axleKind, end.layout(), kind.blank(Tag.asFound(place)));
  }

  /** Whether a part of it is as a row of the table wants one. */
  boolean meets(PartCondition condition) {
    return decisions.stream().anyMatch(decision -> condition.isMetBy(decision, this));
  }

  /** The part that was decided on. */
  InspectedPart inspected(Place place) {
    return parts.stream().filter(one -> one.part().place().equals(place)).findFirst().orElseThrow();
  }

  /**
   * The limits of an id that are in force for the parts of this wheel end, each once.
   *
   * @param otherwise what a reading on their wrong side means; empty if the table does not say
   */
  List<LimitToMeet> limits(String id, PartKind kind, String otherwise) {
    List<Subject> known =
        parts.stream()
            .filter(one -> one.part().partKind() == kind)
            .map(InspectedPart::subject)
            .toList();
    return (known.isEmpty() ? List.of(subject(kind)) : known)
        .stream()
            .flatMap(one -> checks.inForce(id, one).stream())
            .map(applied -> toMeet(applied, otherwise))
            .distinct()
            .toList();
  }

  private LimitToMeet toMeet(AppliedLimit applied, String otherwise) {
    Limit row = applied.row().limit();
    return new LimitToMeet(
        applied.limit(), otherwise, row.station(), row.methods(), checks.pressure(row));
  }

  /** The reasons that stop work on parts of this wheel end, with their parts. */
  List<Held> held() {
    return decisions.stream()
        .flatMap(
            decision ->
                decision.reasons().stream()
                    .filter(reason -> reason.verdict() == Verdict.HOLD)
                    .map(reason -> new Held(decision.part(), reason)))
        .toList();
  }

  /**
   * A part on hold.
   *
   * @param part the part
   * @param reason why
   */
  record Held(Place part, Reason reason) {

    String inWords() {
      return part.inWords()
          + ": "
          + reason.sentence()
          + " "
          + reason.action()
          + " ("
          + reason.rule()
          + ")";
    }
  }
}
