package org.brakerules.trial.coverage;

/**
 * Something that may stay open: a row of {@code coverage-open.csv}, or a point in {@code
 * unread.csv}.
 *
 * @param what which kind of thing, such as {@code condition-fails}
 * @param id the rule, condition, row, source or point
 * @param reason why it may stay open
 */
public record ListedItem(String what, String id, String reason) {

  /** Whether it is the row of something open. */
  public boolean isFor(OpenItem item) {
    return what.equals(item.what()) && id.equals(item.id());
  }
}
