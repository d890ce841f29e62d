package org.brakerules.model.job;

/**
 * How the uncertainty of a reading counts when it is held against a limit, in the words of ILAC-G8.
 */
public enum Acceptance {
  /** Simple acceptance: the reading alone counts, however uncertain it is. */
  SIMPLE,
  /** Guarded acceptance where the uncertainty of a reading is stated, simple where it is not. */
  GUARDED_IF_STATED,
  /** Guarded acceptance with the uncertainty stated, or that of the instrument if none is. */
  GUARDED
}
