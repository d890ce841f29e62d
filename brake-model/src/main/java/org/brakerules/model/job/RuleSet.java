package org.brakerules.model.job;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The body of rules that holds on the road where the vehicle runs, such as {@code us-federal}.
 * Which rule sets there are is data of the rule base.
 *
 * @param id lower-case letters, digits and hyphens
 */
public record RuleSet(String id) {

  private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{0,39}");

  /**
   * Checks the id.
   *
   * @throws IllegalArgumentException if it has other characters
   */
  public RuleSet {
    if (!ID.matcher(id).matches()) {
      throw new IllegalArgumentException(
          "\""
              + id
              + "\" names no rule set; write lower-case letters, digits and hyphens, such as"
              + " us-federal.");
    }
  }

  /** Written out, as is its hash: what Java makes for a record is put together at first use. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof RuleSet that && id.equals(that.id);
  }

  @Override
  public int hashCode() {
    return id.hashCode();
  }

  @Override
  public String toString() {
    return id;
  }
}
