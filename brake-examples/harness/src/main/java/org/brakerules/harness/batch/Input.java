package org.brakerules.harness.batch;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.zip.ZipException;

/** The bytes of an input, unpacked where they are packed, and how many of the file were read. */
final class Input {

  private static final int PACKED_1 = 0x1f;
  private static final int PACKED_2 = 0x8b;
  private static final int BUFFER = 1 << 16;

  private final CountedStream file;
  private final InputStream lines;

  /**
   * Looks at the first bytes.
   *
   * @param name the name of the input; one that ends in {@code .gz} has to be packed
   */
  Input(String name, InputStream stream) throws UnreadableInputException {
    file = new CountedStream(stream);
    BufferedInputStream buffered = new BufferedInputStream(file, BUFFER);
    try {
      boolean packed = isPackedByName(name) || isPacked(buffered);
      lines = packed ? new PackedStream(buffered, file) : buffered;
    } catch (IOException failure) {
      throw unreadable(failure);
    }
  }

  /** Whether a file of this name is packed. */
  static boolean isPackedByName(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(".gz");
  }

  private static boolean isPacked(BufferedInputStream in) throws IOException {
    in.mark(2);
    boolean packed = in.read() == PACKED_1 && in.read() == PACKED_2;
    in.reset();
    return packed;
  }

  /** Reads some bytes into the buffer; -1 at the end. */
  int read(byte[] buffer) throws UnreadableInputException {
    try {
      return lines.read(buffer);
    } catch (IOException failure) {
      throw unreadable(failure);
    }
  }

  /** How many bytes of the file were read. */
  long position() {
    return file.count();
  }

  private static UnreadableInputException unreadable(IOException failure) {
    return new UnreadableInputException(reason(failure), failure);
  }

  private static String reason(IOException failure) {
    if (failure instanceof EOFException) {
      return "ends in the middle of packed data (gzip); it is not whole";
    }
    return failure instanceof ZipException
        ? "is no packed file (gzip), or is damaged: " + failure.getMessage()
        : "cannot be read: " + failure.getMessage();
  }
}
