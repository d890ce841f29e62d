package org.brakerules.harness;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/**
 * What a command reads from and writes to.
 *
 * @param in standard input
 * @param out standard output
 * @param err standard error
 */
record Terminal(InputStream in, PrintWriter out, PrintWriter err) {

  /** The terminal of this process, in UTF-8 whatever the locale. */
  static Terminal ofThisProcess() {
    return new Terminal(System.in, writer(FileDescriptor.out), writer(FileDescriptor.err));
  }

  private static PrintWriter writer(FileDescriptor descriptor) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
  }

  /**
   * Writes one line to standard error; characters that would steer a terminal are not passed on.
   */
  void complain(String line) {
    err.println(line.replaceAll("\\p{Cntrl}", "?"));
    err.flush();
  }

  /** Whether everything could be written; a closed pipe is no reason to crash. */
  boolean isWritten() {
    return !out.checkError();
  }
}
