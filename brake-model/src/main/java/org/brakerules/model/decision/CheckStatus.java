package org.brakerules.model.decision;

/** How a reading stands against a limit. */
public enum CheckStatus {
  /** Inside the limit. */
  WITHIN,
  /** Beyond the limit. */
  BEYOND,
  /** So close to the limit that its uncertainty proves neither. */
  UNPROVEN,
  /** No reading was taken. */
  MISSING,
  /** A reading was taken at another station or by another method than the limit's. */
  WRONG_METHOD,
  /** No limit is known for this part. */
  NO_LIMIT
}
