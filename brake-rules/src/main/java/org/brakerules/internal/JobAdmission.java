package org.brakerules.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.JobRefusedException;
import org.brakerules.internal.table.Property;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.part.Part;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.text.NearestName;

/** Refuses a job that names what the rule base does not know. */
final class JobAdmission {

  private final Tables tables;
  private final BrakeJob job;
  private final List<String> problems = new ArrayList<>();
  private final Set<List<String>> named = new HashSet<>();

  JobAdmission(Tables tables, BrakeJob job) {
    this.tables = tables;
    this.job = job;
  }

  void check() {
    String ruleSet = job.ruleSet().id();
    if (tables.ruleSets().find(ruleSet).isEmpty()) {
      problems.add(unknown("rule set", ruleSet, tables.ruleSets().ids()));
    }
    job.makersLimits().forEach(this::check);
    if (!problems.isEmpty()) {
      throw new JobRefusedException(problems);
    }
  }

  private void check(MakersLimit makers) {
    Optional<Limit> row = tables.limits().first(makers.limit());
    if (row.isEmpty()) {
      problems.add(unknown("limit", makers.limit(), tables.limits().ids()));
    } else if (!isSameKind(row.get(), makers.value())) {
      problems.add(
          "The maker's limit for "
              + makers.limit()
              + " is "
              + makers.value()
              + "; write "
              + example(row.get())
              + ".");
    }
    row.filter(limit -> isAbsurd(makers, limit))
        .ifPresent(
            limit ->
                problems.add(
                    "The maker's limit for "
                        + makers.limit()
                        + " is "
                        + makers.value()
                        + ", more than any brake has; check the decimal point and the unit."));
    if (covered(makers).findAny().isEmpty()) {
      problems.add(
          onPath(makers)
              + ", and no part of the job is there; write the path of a part or wheel end.");
    } else if (row.filter(limit -> missesItsParts(makers, limit)).isPresent()) {
      problems.add(
          onPath(makers)
              + ", and no "
              + row.get().part().inWords()
              + " is there; write the path of one, or of its wheel end.");
    }
    if (!named.add(List.of(makers.limit(), makers.on()))) {
      problems.add(onPath(makers) + " twice; keep the one that holds.");
    }
  }

  /**
   * A limit on a whole wheel end may wait for its part; one on a part of another kind never holds.
   */
  private boolean missesItsParts(MakersLimit makers, Limit limit) {
    return job.wheelEnds().noneMatch(end -> makers.covers(end.path().toString()))
        && covered(makers).noneMatch(part -> part.partKind() == limit.part());
  }

  private static boolean isSameKind(Limit limit, Quantity<?> value) {
    return Property.of(limit.part(), limit.property())
        .filter(property -> property.measures(value))
        .isPresent();
  }

  private static String example(Limit limit) {
    return limit
        .value()
        .map(value -> "it in the unit of a value such as " + value)
        .orElse("a value of " + limit.property());
  }

  private static boolean isAbsurd(MakersLimit makers, Limit limit) {
    return Property.of(limit.part(), limit.property())
        .flatMap(Property::atMost)
        .filter(most -> exceeds(makers.value(), most))
        .isPresent();
  }

  /** Of two kinds of quantity neither exceeds the other; that is refused by its own message. */
  @SuppressWarnings("unchecked") // both are of one class
  private static <Q extends Quantity<Q>> boolean exceeds(Quantity<?> value, Quantity<?> most) {
    return value.getClass() == most.getClass() && ((Q) value).compareTo((Q) most) > 0;
  }

  private Stream<Part> covered(MakersLimit makers) {
    return job.parts().filter(part -> makers.covers(part.place().toString()));
  }

  private static String onPath(MakersLimit makers) {
    return "The maker's limit for " + makers.limit() + " is on \"" + makers.on() + "\"";
  }

  private static String unknown(String what, String name, Collection<String> known) {
    String hint =
        NearestName.of(name, known)
            .map(near -> "did you mean \"" + near + "\"?")
            .orElseGet(() -> "known are " + String.join(", ", known) + ".");
    return "\"" + name + "\" is no " + what + " of this rule base; " + hint;
  }
}
