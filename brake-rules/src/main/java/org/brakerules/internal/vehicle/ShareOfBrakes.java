package org.brakerules.internal.vehicle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.brakerules.internal.vehicle.Criterion.DefectiveShare;
import org.brakerules.vehicle.BrakeCount;
import org.brakerules.vehicle.BrakeCount.Stroke;
import org.brakerules.vehicle.CriterionStatus.Answer;

/**
 * Counts defective brakes twice: those that are so for certain, and those that may be. The truth
 * lies between, so a criterion is answered only where both counts fall on one side of it.
 */
final class ShareOfBrakes {

  private static final BigDecimal HUNDRED = new BigDecimal(100);

  private final DefectiveShare share;
  private final List<BrakeCount> brakes;
  private int whole;
  private int half;
  private int mayBeWhole;
  private int halfThatMayBeWhole;

  ShareOfBrakes(DefectiveShare share, List<BrakeCount> brakes) {
    this.share = share;
    this.brakes = brakes;
    brakes.forEach(this::count);
  }

  private void count(BrakeCount brake) {
    boolean others = share.others() && !brake.otherwise().isEmpty();
    if (isWhole(brake)) {
      whole++;
    } else if (brake.stroke() == Stroke.BEYOND && share.halves()) {
      half++;
      halfThatMayBeWhole += others ? 1 : 0;
    } else if (brake.stroke() == Stroke.OPEN || others) {
      mayBeWhole++;
    }
  }

  private boolean isWhole(BrakeCount brake) {
    return brake.beyond().filter(by -> by.compareTo(share.wholeFrom()) >= 0).isPresent();
  }

  /** The fewest brakes that make the share: the share of all brakes, rounded up. */
  int needed() {
    return share
        .share()
        .percent()
        .multiply(BigDecimal.valueOf(brakes.size()))
        .divide(HUNDRED, 0, RoundingMode.CEILING)
        .intValueExact();
  }

  /** How many are defective for certain; a half left over does not count. */
  int certain() {
    return whole + half / 2;
  }

  /** How many are defective if everything open turns out against the vehicle. */
  int atMost() {
    return whole + mayBeWhole + halfThatMayBeWhole + (half - halfThatMayBeWhole) / 2;
  }

  Answer answer() {
    if (certain() >= needed()) {
      return Answer.REACHED;
    }
    return atMost() < needed() ? Answer.NOT_REACHED : Answer.OPEN;
  }

  String finding() {
    return "Of the "
        + brakes.size()
        + " brakes of the axles in this job "
        + whole
        + " count whole"
        + (share.halves() ? " and " + half + " half" : "")
        + " by their stroke: "
        + certain()
        + (half % 2 == 1 ? ", and a half left over that does not count" : "")
        + ". "
        + needed()
        + " make "
        + share.share()
        + ". With everything that is open it could be "
        + atMost()
        + ".";
  }

  List<String> open() {
    List<String> open = new ArrayList<>();
    for (BrakeCount brake : brakes) {
      if (brake.stroke() == Stroke.OPEN) {
        open.add("the applied stroke of " + brake.wheelEnd() + ", read as its limit wants it");
      }
      if (share.others() && !brake.otherwise().isEmpty() && !isWhole(brake)) {
        open.add(
            "whether "
                + brake.wheelEnd()
                + " is a defective brake for "
                + String.join(", ", brake.otherwise())
                + ", which fails the law");
      }
    }
    open.add("every axle of the vehicle or combination that is not in this job");
    return open;
  }
}
