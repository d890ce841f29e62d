package org.brakerules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.text.NearestName;

/** Refuses a job that names what the rule base does not know. */
final class JobAdmission {

  private final Tables tables;
  private final BrakeJob job;
  private final List<String> problems = new ArrayList<>();

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
    } else if (row.get().value().getClass() != makers.value().getClass()) {
      problems.add(
          "The maker's limit for "
              + makers.limit()
              + " is "
              + makers.value()
              + "; write it in the unit of a value such as "
              + row.get().value()
              + ".");
    }
    if (job.parts().noneMatch(part -> makers.covers(part.place().toString()))) {
      problems.add(
          "The maker's limit for "
              + makers.limit()
              + " is on \""
              + makers.on()
              + "\", and no part of the job is there; write the path of a part or wheel end.");
    }
  }

  private static String unknown(String what, String name, Collection<String> known) {
    String hint =
        NearestName.of(name, known)
            .map(near -> "did you mean \"" + near + "\"?")
            .orElseGet(() -> "known are " + String.join(", ", known) + ".");
    return "\"" + name + "\" is no " + what + " of this rule base; " + hint;
  }
}
