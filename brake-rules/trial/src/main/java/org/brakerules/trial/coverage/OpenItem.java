package org.brakerules.trial.coverage;

/**
 * Something that the cases, or the tables, leave open.
 *
 * @param what which kind of thing, such as {@code condition-fails}
 * @param id the rule, condition, row, source or point
 * @param component the component it belongs to; empty for a source
 * @param words what is open, as a sentence without its full stop
 */
public record OpenItem(String what, String id, String component, String words) {

  /** The kind of an inspection point that nobody reads. */
  public static final String POINT = "point";
}
