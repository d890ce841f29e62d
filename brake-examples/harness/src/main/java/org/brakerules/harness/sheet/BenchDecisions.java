package org.brakerules.harness.sheet;

import java.util.List;
import java.util.Optional;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.PartKind;
import org.brakerules.parts.Ground;
import org.brakerules.parts.Handling;
import org.brakerules.parts.PartsLine;
import org.brakerules.parts.WheelEndParts;

/**
 * The decisions as the bench carries them out. A shim that is fit to go back stays out where the
 * end play asks for another, a sound shoe leaves the shop where shoes with lining are ordered, and
 * a good part gives way where a new one needs or brings another.
 */
final class BenchDecisions {

  private static final String SHOES = "shoe-with-lining";
  private static final String IN_EXCHANGE =
      "In exchange with its lining. A shop that lines its own shoes puts this one back.";

  private static final String AS_ONE_UNIT = "Comes with the new %s, as one unit.";

  private final List<Decision> decisions;
  private final Optional<WheelEndParts> parts;
  private final Optional<Working> shims;

  BenchDecisions(List<Decision> decisions, Optional<WheelEndParts> parts, Optional<Working> shims) {
    this.decisions = List.copyOf(decisions);
    this.parts = parts;
    this.shims = shims;
  }

  List<Decision> all() {
    return decisions.stream().map(this::carriedOut).toList();
  }

  /** Whether it was found good and is on no hold, so that another part can make it give way. */
  static boolean givesWay(Decision decision) {
    return !decision.hold() && decision.disposition().compareTo(Disposition.UNDECIDED) < 0;
  }

  private Decision carriedOut(Decision decision) {
    if (!givesWay(decision)) {
      return decision;
    }
    return switch (decision.part().kind()) {
      case SHIM -> shims.flatMap(working -> changed(decision, working)).orElse(decision);
      case SHOE -> lining(decision).map(why -> exchanged(decision, why)).orElse(decision);
      default -> renewedBesideAnother(decision).orElse(decision);
    };
  }

  /** A good part that the parts list has new, because another new part needs or brings it. */
  private Optional<Decision> renewedBesideAnother(Decision good) {
    return parts.stream()
        .flatMap(list -> list.lines().stream())
        .filter(PartsLine::isRenewedBesideAnother)
        .filter(line -> line.own().anyMatch(good.part()::equals))
        .findFirst()
        .map(line -> renewed(good, line));
  }

  private static Decision renewed(Decision good, PartsLine line) {
    Ground ground = line.grounds().get(0);
    String action =
        line.comesWith()
            .map(unit -> AS_ONE_UNIT.formatted(unit.singular()))
            .orElseGet(ground::sentence);
    Reason why =
        new Reason(
            ground.id(),
            line.item().singular(),
            Verdict.REPLACE,
            ground.sentence(),
            action,
            List.of(),
            good.reasons().get(0).source());
    return with(good, Disposition.REPLACE, why, action);
  }

  private Optional<Decision> changed(Decision shim, Working working) {
    return reason(PartKind.CAMSHAFT, Verdict.ADJUST, shim)
        .filter(why -> ShimAnswer.changes(working))
        .map(why -> with(shim, Disposition.ADJUST, why, ShimAnswer.inWords(working)));
  }

  /** The reason for the new lining, where the parts list has shoes that bring it. */
  private Optional<Reason> lining(Decision shoe) {
    boolean ordered =
        parts.stream()
            .flatMap(list -> list.lines().stream())
            .filter(line -> line.item().id().equals(SHOES) && line.handling() == Handling.ORDER)
            .anyMatch(line -> line.places().contains(shoe.part()));
    return ordered ? reason(PartKind.LINING, Verdict.REPLACE, shoe) : Optional.empty();
  }

  private static Decision exchanged(Decision shoe, Reason why) {
    return with(shoe, Disposition.REPLACE, why, IN_EXCHANGE);
  }

  private Optional<Reason> reason(PartKind kind, Verdict verdict, Decision beside) {
    return decisions.stream()
        .filter(one -> one.part().kind() == kind)
        .filter(one -> kind != PartKind.LINING || one.part().station() == beside.part().station())
        .flatMap(one -> one.reasons().stream())
        .filter(reason -> reason.verdict() == verdict)
        .findFirst();
  }

  private static Decision with(
      Decision decision, Disposition disposition, Reason why, String action) {
    Reason reason =
        new Reason(
            why.rule(),
            why.title(),
            why.verdict(),
            why.sentence(),
            action,
            why.evidence(),
            why.source());
    return new Decision(
        decision.part(),
        disposition,
        false,
        decision.road(),
        List.of(reason),
        decision.needed(),
        decision.passed(),
        decision.withoutLimit(),
        decision.lookedAt());
  }
}
