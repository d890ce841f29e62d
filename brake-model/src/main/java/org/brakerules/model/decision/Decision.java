package org.brakerules.model.decision;

import java.util.List;
import org.brakerules.model.part.Place;

/**
 * The decision on one part.
 *
 * @param part the part
 * @param disposition what to do with it: whether it is fit to go back today
 * @param hold whether work on it must stop
 * @param road what the rule set of the job says about it on the road
 * @param reasons every reason, the gravest first
 * @param needed what must still be looked at, measured or stated
 * @param passed every reading inside its limit, with its margin
 * @param withoutLimit every reading for which no limit is in force, so that nobody judged it
 * @param lookedAt every point whose sign was looked for and not seen
 */
public record Decision(
    Place part,
    Disposition disposition,
    boolean hold,
    RoadAnswer road,
    List<Reason> reasons,
    List<Needed> needed,
    List<Check> passed,
    List<Check> withoutLimit,
    List<String> lookedAt) {

  /** Keeps its own copies of the lists. */
  public Decision {
    reasons = List.copyOf(reasons);
    needed = List.copyOf(needed);
    passed = List.copyOf(passed);
    withoutLimit = List.copyOf(withoutLimit);
    lookedAt = List.copyOf(lookedAt);
  }

  /** Everything there is to do, each once, in the order of the reasons. */
  public List<String> actions() {
    return reasons.stream().map(Reason::action).filter(text -> !text.isEmpty()).distinct().toList();
  }
}
