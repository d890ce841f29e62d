package org.brakerules.parts;

/**
 * Why a line stands on the parts list.
 *
 * @param kind what kind of reason it is
 * @param id the rule, or the row of the table of quantities or axle sets, that says so
 * @param sentence the reason in one sentence
 */
public record Ground(Kind kind, String id, String sentence) {

  /** The kinds of reasons. */
  public enum Kind {
    /** The decision on the part. */
    DECISION,
    /** It belongs to the minimum set of a reline. */
    MINIMUM_SET,
    /** It is renewed, or compared, on both wheels of the axle. */
    AXLE_SET,
    /** It is needed with another part that is replaced. */
    NEEDED_WITH,
    /** It is new and used once, and comes off for the work where it is fitted already. */
    USED_ONCE,
    /** It sits on the worn shoes. */
    WORN_SHOES,
    /** Its wheel end is not in the job. */
    NOT_INSPECTED
  }
}
