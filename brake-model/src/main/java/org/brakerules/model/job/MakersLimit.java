package org.brakerules.model.job;

import org.brakerules.model.quantity.Quantity;

/**
 * A limit of the vehicle's or part's own maker, supplied by the shop. It outranks every limit of
 * the rule base but a law's; beside a law's both hold.
 *
 * @param limit the id of the limit it replaces, such as {@code camshaft-bushing.radial-play.max}
 * @param on the path, or the beginning of the path, of the parts it is for; empty for all parts of
 *     the job
 * @param value the value
 * @param document where it is written, such as the title of the manual or {@code cast on the drum}
 * @param page the page or paragraph; empty if it has none
 */
public record MakersLimit(
    String limit, String on, Quantity<?> value, String document, String page) {

  /**
   * Checks the limit.
   *
   * @throws IllegalArgumentException if the limit or the document is not named, or the value is
   *     negative
   */
  public MakersLimit {
    if (limit.isBlank()) {
      throw new IllegalArgumentException("A maker's limit names the limit it replaces.");
    }
    if (value.isNegative()) {
      throw new IllegalArgumentException(
          "The maker's limit for " + limit + " is " + value + "; a limit is never negative.");
    }
    if (document.isBlank()) {
      throw new IllegalArgumentException(
          "The maker's limit for " + limit + " names no document; say where it is written.");
    }
  }

  /** Whether it is for the part at this path. */
  public boolean covers(String path) {
    return on.isEmpty() || path.equals(on) || path.startsWith(on + "/");
  }
}
