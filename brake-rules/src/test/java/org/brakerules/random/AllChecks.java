package org.brakerules.random;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.decide.InspectedPart;
import org.brakerules.internal.decide.InspectedParts;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Check;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;

/**
 * Every check of a job, also those that no decision shows: a decision names the checks it passed
 * and those its reasons rest on.
 */
public final class AllChecks {

  private static final Tables TABLES = Tables.load();

  private AllChecks() {}

  /** How the readings of each part stand against every limit of its kind. */
  public static Map<Place, List<Check>> of(BrakeJob job) {
    return InspectedParts.of(job, Checks.of(TABLES, job)).stream()
        .collect(Collectors.toMap(part -> part.part().place(), InspectedPart::checks));
  }
}
