package org.brakerules.internal.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakerules.internal.vehicle.Criterion.SteerAxleAlike;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.vehicle.AxleMatch;
import org.brakerules.vehicle.AxleMatch.Likeness;
import org.brakerules.vehicle.AxleStatus;
import org.brakerules.vehicle.CriterionStatus.Answer;

/** Whether the steering axles of a job are alike at both ends. */
final class SteerAxles {

  private final List<String> unlike = new ArrayList<>();
  private final List<String> open = new ArrayList<>();
  private int looked;

  SteerAxles(SteerAxleAlike alike, List<AxleStatus> axles) {
    for (AxleStatus axle : axles) {
      if (axle.kind() == AxleKind.STEER) {
        looked++;
        axle.matches().stream()
            .filter(match -> alike.matters().contains(match.matter()))
            .forEach(match -> hold(axle, match));
      } else if (axle.kind() == AxleKind.UNKNOWN) {
        open.add("what " + axle.path() + " does: steer, drive or trailer");
      }
    }
  }

  private void hold(AxleStatus axle, AxleMatch match) {
    String matter = match.matter().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    if (match.likeness() == Likeness.UNLIKE) {
      unlike.add(
          matter
              + " of "
              + axle.path()
              + ": "
              + match.left()
              + " left, "
              + match.right()
              + " right");
    } else if (match.likeness() == Likeness.NOT_STATED) {
      open.add("the " + matter + " at both ends of " + axle.path());
    }
  }

  Answer answer() {
    if (!unlike.isEmpty()) {
      return Answer.REACHED;
    }
    return open.isEmpty() ? Answer.NOT_REACHED : Answer.OPEN;
  }

  String finding() {
    if (!unlike.isEmpty()) {
      return "Unlike: " + String.join("; ", unlike) + ".";
    }
    return looked == 0
        ? "No axle of this job is stated to steer."
        : "Nothing unlike was stated of "
            + looked
            + " steering axle"
            + (looked == 1 ? "" : "s")
            + ".";
  }

  List<String> open() {
    return List.copyOf(open);
  }
}
