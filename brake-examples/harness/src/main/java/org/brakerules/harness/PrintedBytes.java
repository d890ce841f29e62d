package org.brakerules.harness;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Prints bytes of UTF-8 that hold whole characters, and says at once when nobody reads them. */
final class PrintedBytes extends OutputStream {

  private final PrintWriter out;

  PrintedBytes(PrintWriter out) {
    this.out = out;
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    out.print(new String(bytes, from, length, StandardCharsets.UTF_8));
    flush();
  }

  @Override
  public void flush() throws IOException {
    if (out.checkError()) {
      throw new IOException("nobody reads it any more");
    }
  }
}
