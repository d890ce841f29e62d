package org.brakerules.harness;

/** A file cannot be read. The message says why. */
final class UnreadableFileException extends Exception {

  private static final long serialVersionUID = 1L;

  private final String message;

  UnreadableFileException(String message) {
    super(message);
    this.message = message;
  }

  @Override
  public String getMessage() {
    return message;
  }
}
