package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.work.StepRow.Unstated;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.part.PartKind;

/**
 * A row that is for a wheel end.
 *
 * @param end the wheel end
 * @param certain whether the row is for it in any case
 * @param unstated what must be stated before that is known
 * @param parts the decisions on the parts that the row is for
 */
record Match(EndFacts end, boolean certain, Set<String> unstated, List<Decision> parts) {

  /** Empty if the row is not for the wheel end. */
  static Optional<Match> of(StepRow row, EndFacts end) {
    if (row.unless().stream().anyMatch(end::meets)) {
      return Optional.empty();
    }
    return row.asksOfPart() ? ofParts(row, end) : ofBrake(row, end);
  }

  private static Optional<Match> ofBrake(StepRow row, EndFacts end) {
    Subject subject = end.subject();
    Fit fit = row.selector().fit(subject);
    if (!isAccepted(fit, row.unstated())) {
      return Optional.empty();
    }
    List<Decision> parts =
        end.decisions().stream().filter(decision -> isOfKind(row, decision)).toList();
    return Optional.of(
        new Match(
            end, fit == Fit.YES, new LinkedHashSet<>(row.selector().unstated(subject)), parts));
  }

  private static Optional<Match> ofParts(StepRow row, EndFacts end) {
    Set<String> unstated = new LinkedHashSet<>();
    List<Decision> parts = new ArrayList<>();
    for (Decision decision : end.decisions()) {
      Subject subject = end.inspected(decision.part()).subject();
      if (isOfKind(row, decision) && isAccepted(row.selector().fit(subject), row.unstated())) {
        parts.add(decision);
        unstated.addAll(row.selector().unstated(subject));
      }
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Match(end, unstated.isEmpty(), unstated, parts));
  }

  private static boolean isAccepted(Fit fit, Unstated unstated) {
    return switch (fit) {
      case YES -> unstated != Unstated.ONLY;
      case NO -> false;
      case UNKNOWN -> unstated != Unstated.LEAVE_OUT;
    };
  }

  private static boolean isOfKind(StepRow row, Decision decision) {
    PartKind kind = decision.part().kind();
    return row.fits().contains(kind)
        || row.forParts().stream()
            .anyMatch(condition -> condition.kind().map(one -> one == kind).orElse(true));
  }
}
