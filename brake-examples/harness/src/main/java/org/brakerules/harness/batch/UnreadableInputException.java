package org.brakerules.harness.batch;

import java.io.IOException;

/** The input cannot be read any further. The message says why. */
public final class UnreadableInputException extends IOException {

  private static final long serialVersionUID = 1L;

  UnreadableInputException(String message, IOException cause) {
    super(message, cause);
  }
}
