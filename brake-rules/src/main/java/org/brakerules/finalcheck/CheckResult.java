package org.brakerules.finalcheck;

import java.util.List;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Source;

/**
 * How one check of the finished work stands.
 *
 * @param id the id of the check, such as {@code FINAL-180}
 * @param question what is asked
 * @param how how it is proved
 * @param status how it stands
 * @param found what was recorded, or what is still wanted, in a sentence
 * @param limits the limits in force that its reading meets; empty if it has none
 * @param consequence what follows if it fails
 * @param remedy what to do if it fails
 * @param releases whether nothing is released before it passed
 * @param source where it comes from
 */
public record CheckResult(
    String id,
    String question,
    String how,
    Status status,
    String found,
    List<LimitInForce> limits,
    String consequence,
    String remedy,
    boolean releases,
    List<Source> source) {

  /** How a check stands. */
  public enum Status {
    PASSED,
    FAILED,
    /** Nothing is recorded that counts. */
    NOT_RECORDED
  }

  /** Keeps its own copies of the lists. */
  public CheckResult {
    limits = List.copyOf(limits);
    source = List.copyOf(source);
  }

  /** Whether it keeps its wheel end, or the vehicle, from being released. */
  public boolean keepsBack() {
    return releases && status != Status.PASSED;
  }
}
