package org.brakerules.harness.batch;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;

/**
 * Unpacks one packed piece after the other. The one it builds on takes whatever it cannot unpack
 * behind a piece for the end, and would lose lines without a word; this one looks whether the last
 * bytes of the file are those that end the last piece.
 */
final class PackedStream extends GZIPInputStream {

  private static final int BUFFER = 1 << 16;

  private final CountedStream file;
  private long lastPiece;

  /**
   * Reads the beginning of the first piece.
   *
   * @param packed the packed bytes
   * @param file what they come from
   */
  PackedStream(InputStream packed, CountedStream file) throws IOException {
    super(packed, BUFFER);
    this.file = file;
  }

  @Override
  public int read(byte[] buffer, int offset, int length) throws IOException {
    int read = super.read(buffer, offset, length);
    if (read > 0) {
      lastPiece = crc.getValue() | inf.getBytesWritten() << 32;
    } else if (read < 0 && file.lastEight() != lastPiece && file.lastEight() != 0) {
      throw new ZipException("what follows its last whole piece is not packed");
    }
    return read;
  }
}
