package org.brakerules.model.decision;

/**
 * The second answer: what the rule set of the job says about the part on the road. It is milder
 * than the answer to whether the part is fit to go back into a brake that is open today.
 */
public enum RoadAnswer {
  /** The rule set names no sign and no limit for this part that this rule base knows. */
  SILENT,
  /** Every limit and sign the rule set names was looked at and met. */
  MET,
  /**
   * A limit or sign the rule set names is not known yet; or all that are known are met, and the
   * part is replaced or on hold for another reason, of which the law may speak in general words.
   */
  OPEN,
  /** A limit or sign the rule set names is failed. */
  FAILED
}
