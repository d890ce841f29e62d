package org.brakerules.benchmark.result;

import java.util.Optional;

/**
 * A figure that has something to reach.
 *
 * @param id its name in the result file
 * @param title what it is
 * @param unit its unit; {@code x} for a ratio
 * @param target what it should come to
 * @param measured what it came to; empty if it was not measured in this run
 */
public record Figure(
    String id, String title, String unit, Target target, Optional<Measured> measured) {

  /** How far it came, in words. */
  public String outcome() {
    return measured.map(one -> target.outcome(one).words()).orElse("not measured");
  }
}
