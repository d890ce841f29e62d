package org.brakerules.harness.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Writes to where nothing can be taken back or gone on with, such as a pipe. */
final class StreamOutput implements BatchOutput {

  private final OutputStream decided;
  private final OutputStream rejected;
  private final Tally tally = new Tally();

  /** Chooses the streams; they are left open. */
  StreamOutput(OutputStream decided, OutputStream rejected) {
    this.decided = decided;
    this.rejected = rejected;
  }

  /** Writes the line before all others. */
  void start(String heading) throws IOException {
    decided.write(heading.getBytes(StandardCharsets.UTF_8));
    decided.flush();
  }

  @Override
  public void append(ChunkResult result) throws IOException {
    decided.write(result.decided());
    decided.flush();
    rejected.write(result.rejected());
    rejected.flush();
    tally.add(result.tally());
  }

  Tally tally() {
    return tally;
  }
}
