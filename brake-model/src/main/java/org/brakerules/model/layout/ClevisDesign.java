package org.brakerules.model.layout;

/** The design of the clevis. */
public enum ClevisDesign {
  PLAIN,
  /** With a captive nut that sets the length. */
  CAPTIVE_NUT,
  UNKNOWN
}
