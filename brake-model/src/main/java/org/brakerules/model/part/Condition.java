package org.brakerules.model.part;

/** Whether a part came off the vehicle or out of a new box. */
public enum Condition {
  /** The part that was on the vehicle when the job began. */
  AS_FOUND,
  /** A new part, fitted or about to be fitted in this job. */
  NEW
}
