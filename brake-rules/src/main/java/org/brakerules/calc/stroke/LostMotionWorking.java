package org.brakerules.calc.stroke;

import java.util.Optional;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/** Writes down how lost motion was worked out. */
final class LostMotionWorking {

  private static final Basis BASIS =
      Basis.estimate(Standing.DERIVED, "levers of arm, spline and cam");

  private LostMotionWorking() {}

  static Working of(LostMotion lost) {
    Working working =
        start()
            .given("arm", lost.geometry().arm())
            .given("pitch radius of the spline", lost.geometry().splineRadius())
            .given("lift radius of the cam", lost.geometry().lift());
    for (StrokeCost cost : lost.costs()) {
      working =
          working
              .given(cost.looseness().inWords(), cost.play())
              .step(cost.looseness().inWords() + ": " + cost.step(lost.geometry()));
    }
    return results(missing(atArm(working, lost), lost), lost);
  }

  static Working start() {
    return Working.of(
        "lost-motion",
        "Lost motion as push-rod stroke",
        "stroke = play x lever from where it is to the push rod; all added",
        BASIS);
  }

  private static Working atArm(Working working, LostMotion lost) {
    Optional<Length> measured = lost.armMovement();
    if (measured.isEmpty()) {
      return working;
    }
    Working more =
        working
            .given("movement at the clevis hole, cam held", measured.get())
            .step("the measured " + measured.get() + " counts instead of spline and gear");
    Optional<Length> difference = lost.differenceAtArm();
    return difference.isPresent() ? compared(more, difference.get()) : more;
  }

  private static Working compared(Working working, Length difference) {
    Working more = working.result("measured less estimated at the arm", difference);
    return difference.isNegative()
        ? more.missing("arm, spline and gear measured again: the parts are more than the whole")
        : more;
  }

  private static Working missing(Working working, LostMotion lost) {
    Working more = working;
    for (Looseness looseness : Looseness.values()) {
      boolean known =
          lost.costs().stream().anyMatch(cost -> cost.looseness() == looseness)
              || (lost.armMovement().isPresent() && looseness.isMeasuredAtArm());
      more = known ? more : more.missing("play of " + looseness.inWords());
    }
    return more;
  }

  private static Working results(Working working, LostMotion lost) {
    boolean nothingKnown = lost.costs().isEmpty() && lost.armMovement().isEmpty();
    if (nothingKnown) {
      return working;
    }
    boolean all = working.missing().isEmpty();
    Working more = working.result(all ? "lost motion" : "lost motion known so far", lost.total());
    if (lost.most().value().compareTo(lost.total().value()) > 0) {
      more = more.result("at the very most", lost.most());
    }
    Optional<StrokeCost> costliest = lost.costliest();
    return costliest.isPresent()
        ? more.result(
            "most is bought back at " + costliest.get().looseness().inWords(),
            costliest.get().stroke())
        : more;
  }
}
