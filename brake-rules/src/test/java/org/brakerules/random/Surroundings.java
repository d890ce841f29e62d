package org.brakerules.random;

import java.time.LocalDate;
import java.util.Optional;
import org.brakerules.internal.table.Subject;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;

/**
 * What surrounds the parts of one wheel end.
 *
 * @param date the day of the job
 * @param ruleSet the rule set of the job
 * @param builtOn the day the vehicle was built; empty if not stated
 * @param axle what its axle does
 * @param layout how its brake is built
 */
record Surroundings(
    LocalDate date, RuleSet ruleSet, Optional<LocalDate> builtOn, AxleKind axle, Layout layout) {

  Subject subject(Part part) {
    return new Subject(builtOn, axle, layout, part);
  }
}
