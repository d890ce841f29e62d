package org.brakerules.internal.table;

/** A mistake in the rule base itself: a table or rule file that cannot be used. */
public final class RuleBaseException extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  /** Says where the mistake is, what was found, and what to write instead. */
  public RuleBaseException(String message) {
    super(message);
  }

  /** Says where the mistake is, with the exception it showed as. */
  public RuleBaseException(String message, Throwable cause) {
    super(message, cause);
  }
}
