package org.brakerules.harness.batch;

import java.io.IOException;
import java.io.OutputStream;
import org.brakerules.BrakeRules;

/**
 * A batch into a stream, from which nobody can go on if it is stopped.
 *
 * @param rules whose names the decisions use
 * @param form who decides, and how a line is written
 * @param threads how many threads decide
 */
public record StreamBatch(BrakeRules rules, Form form, int threads) {

  /**
   * Decides every job. The streams are left open.
   *
   * @param input one job a line
   * @param decided takes one line per decision
   * @param rejected takes one line per line without a decision
   * @param progress is told how far it is
   * @throws UnreadableInputException if the input breaks off; the whole chunks read of it are
   *     decided
   * @throws IOException if a stream cannot be written
   */
  public Outcome run(
      NamedInput input, OutputStream decided, OutputStream rejected, Progress progress)
      throws IOException {
    LineChunks chunks = new LineChunks(new Input(input.name(), input.stream()));
    StreamOutput output = new StreamOutput(decided, rejected);
    output.start(form.heading());
    Batch.run(chunks, form, Packing.NONE, output, progress, threads);
    return new Outcome(rules, output.tally());
  }
}
