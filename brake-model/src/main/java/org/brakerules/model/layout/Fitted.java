package org.brakerules.model.layout;

/** Whether a brake has a certain part. */
public enum Fitted {
  YES,
  NO,
  UNKNOWN
}
