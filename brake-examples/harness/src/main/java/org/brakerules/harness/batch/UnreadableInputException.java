package org.brakerules.harness.batch;

import java.io.IOException;

/**
 * The input cannot be read any further. The message says why; the cause is an {@link
 * java.util.zip.ZipException} where packed data are damaged, so that lines before may be as well.
 */
public final class UnreadableInputException extends IOException {

  private static final long serialVersionUID = 1L;

  UnreadableInputException(String message, IOException cause) {
    super(message, cause);
  }
}
