package org.brakerules.model.part;

/** What a look at a part found. A look that was left out is never good news. */
public enum Sign {
  /** Looked at, and the sign is there. */
  SEEN,
  /** Looked at, and the sign is not there. */
  NOT_SEEN,
  /** Nobody looked. */
  NOT_CHECKED
}
