package org.brakerules.model.job;

import java.util.regex.Pattern;

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

  @Override
  public String toString() {
    return id;
  }
}
