package org.brakerules.model.layout;

/** How the anchor pins sit in the spider. */
public enum AnchorPins {
  /** Fixed in the spider. */
  FIXED,
  /** Removable, in bushings. */
  REMOVABLE,
  UNKNOWN
}
