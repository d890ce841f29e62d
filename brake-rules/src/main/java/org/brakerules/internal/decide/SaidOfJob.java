package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakerules.internal.engine.Finding;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.part.Place;

/** What the rules said of a job. */
final class SaidOfJob {

  private final Map<Place, List<Said>> ofPart = new HashMap<>();
  private final Set<Evidence> signs = new HashSet<>();

  SaidOfJob(List<Finding> findings) {
    for (Finding finding : findings) {
      Said said = Said.of(finding);
      ofPart.computeIfAbsent(finding.part().place(), place -> new ArrayList<>()).add(said);
      for (Evidence evidence : said.evidence()) {
        if (evidence instanceof Evidence.Stated) {
          signs.add(evidence);
        }
      }
    }
  }

  /** What they said of a part. */
  List<Said> of(Place part) {
    return ofPart.getOrDefault(part, List.of());
  }

  /** Every sign and state, of whatever part, that any of them spoke of. */
  Set<Evidence> signs() {
    return signs;
  }
}
