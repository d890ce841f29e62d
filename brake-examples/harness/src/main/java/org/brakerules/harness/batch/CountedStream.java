package org.brakerules.harness.batch;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * Counts what is read through it, remembers its end, and says that there is more until its end was
 * seen: the unpacker asks whether another packed piece follows, and a slow pipe would answer no.
 */
final class CountedStream extends FilterInputStream {

  private long count;
  private boolean isAtEnd;
  private long lastEight;

  CountedStream(InputStream in) {
    super(in);
  }

  long count() {
    return count;
  }

  /** The last eight bytes that were read, the first of them lowest. */
  long lastEight() {
    return lastEight;
  }

  @Override
  public int read() throws IOException {
    int one = super.read();
    took(one < 0 ? -1 : 1);
    lastEight = one < 0 ? lastEight : lastEight >>> 8 | (long) one << 56;
    return one;
  }

  @Override
  public int read(byte[] buffer, int offset, int length) throws IOException {
    int read = super.read(buffer, offset, length);
    took(read);
    for (int at = Math.max(0, read - 8); at < read; at++) {
      lastEight = lastEight >>> 8 | (long) (buffer[offset + at] & 0xff) << 56;
    }
    return read;
  }

  private void took(int bytes) {
    isAtEnd = bytes < 0;
    count += Math.max(bytes, 0);
  }

  @Override
  public int available() throws IOException {
    return isAtEnd ? 0 : Math.max(1, super.available());
  }
}
