package org.brakerules.harness.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.zip.GZIPOutputStream;

/** Makes the bytes of a file from the bytes of its lines. */
enum Packer {
  /** As they are. */
  PLAIN,
  /** Each piece packed by itself, so that a file cut off between two pieces is a whole file. */
  GZIP;

  /** What suits the name of a file. */
  static Packer of(String name) {
    return Input.isPackedByName(name) ? GZIP : PLAIN;
  }

  /** Packs some lines; of no lines nothing is made. */
  byte[] pack(byte[] lines) {
    return this == PLAIN || lines.length == 0 ? lines : gzip(lines);
  }

  /** What a file without any line holds. */
  byte[] nothing() {
    return this == PLAIN ? new byte[0] : gzip(new byte[0]);
  }

  private static byte[] gzip(byte[] lines) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream(lines.length / 4 + 64);
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(lines);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return packed.toByteArray();
  }
}
