package org.brakerules.harness.cases;

/** A file of cases is not written as it should be. The message says where and what to write. */
public final class InvalidCaseException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final String message;

  InvalidCaseException(String message) {
    super(message);
    this.message = message;
  }

  @Override
  public String getMessage() {
    return message;
  }
}
