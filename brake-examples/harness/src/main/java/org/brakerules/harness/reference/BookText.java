package org.brakerules.harness.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A text that was written for the book and lies beside its classes. */
final class BookText {

  private BookText() {}

  static String read(String name) {
    try (InputStream in = BookText.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("This program was packed without " + name + ".");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
