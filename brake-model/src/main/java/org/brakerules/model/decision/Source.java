package org.brakerules.model.decision;

/**
 * Where a rule or limit comes from.
 *
 * @param id the id of the source, such as {@code US-ARMY-TM-5-4210-220-12}
 * @param clause the paragraph or page; empty if it has none
 * @param title the title a reader can look for
 * @param standing how far it can be relied on
 */
public record Source(String id, String clause, String title, Standing standing) {

  /** The citation as rule files write it: the id, and the clause behind a hash. */
  public String citation() {
    return clause.isEmpty() ? id : id + "#" + clause;
  }
}
