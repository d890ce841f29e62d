package org.brakerules.vehicle;

import java.util.List;
import org.brakerules.model.decision.Source;

/**
 * One published criterion held against the vehicle.
 *
 * @param id the id of the criterion, such as {@code defective-brakes}
 * @param title its title
 * @param answer what the job shows
 * @param says what the criterion says
 * @param finding the numbers of this vehicle in one sentence
 * @param open what must still be looked at or stated, and what this program does not count
 * @param ask whom to ask, and what; nobody but them decides
 * @param source where the criterion was read
 */
public record CriterionStatus(
    String id,
    String title,
    Answer answer,
    String says,
    String finding,
    List<String> open,
    String ask,
    Source source) {

  /** What a job shows of a criterion. */
  public enum Answer {
    /** What was looked at comes to it. */
    REACHED,
    /** Whatever the open points turn out to be, it is not reached. */
    NOT_REACHED,
    /** It hangs on what is not known. */
    OPEN
  }

  /** Keeps its own copy of the list. */
  public CriterionStatus {
    open = List.copyOf(open);
  }
}
