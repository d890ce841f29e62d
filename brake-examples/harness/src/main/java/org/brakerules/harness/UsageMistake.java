package org.brakerules.harness;

/** The command was not called as its help says. The message says what to write instead. */
public final class UsageMistake extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String message;

  /** Says what is wrong and what to write instead. */
  public UsageMistake(String message) {
    super(message);
    this.message = message;
  }

  @Override
  public String getMessage() {
    return message;
  }
}
