package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Property;
import org.brakerules.internal.table.Subject;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Sign;

/**
 * One part of a job with its readings held against their limits.
 *
 * @param subject the part and what surrounds it
 * @param inspected whether the job mentions the part; if not, the layout implies it
 * @param checks every limit of its kind, with how its readings stand
 */
public record InspectedPart(Subject subject, boolean inspected, List<Check> checks) {

  /** The part. */
  public Part part() {
    return subject.part();
  }

  /** How the readings of one property stand. */
  public List<Check> checksOf(String property) {
    return those(check -> check.property().equals(property));
  }

  List<Check> checks(CheckStatus status) {
    return those(check -> check.status() == status);
  }

  /** Readings of properties that no limit in force speaks of. */
  List<Check> withoutLimit() {
    return those(
        check ->
            check.status() == CheckStatus.NO_LIMIT
                && check.reading().isPresent()
                && !isLimited(check.property()));
  }

  private boolean isLimited(String property) {
    for (Check check : checks) {
      if (check.limit().isPresent() && check.property().equals(property)) {
        return true;
      }
    }
    return false;
  }

  private List<Check> those(Predicate<Check> wanted) {
    List<Check> found = List.of();
    for (Check check : checks) {
      if (wanted.test(check)) {
        found = found.isEmpty() ? new ArrayList<>() : found;
        found.add(check);
      }
    }
    return found;
  }

  Object valueOf(Point point) {
    return point.valueOf(subject);
  }

  boolean shows(Property sign, Sign wanted) {
    return sign.isSign() && sign.valueOf(part()) == wanted;
  }
}
