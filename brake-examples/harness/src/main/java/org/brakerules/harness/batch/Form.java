package org.brakerules.harness.batch;

import java.io.IOException;
import java.io.OutputStream;
import org.brakerules.model.job.BrakeJob;

/** How jobs are decided, and how a decision is written as one line. Threads share it. */
public interface Form {

  /** What the form is called, to be told from another. */
  String name();

  /** The line before all others, with its line feed; empty if there is none. */
  String heading();

  /**
   * Decides a job and writes the decision.
   *
   * @param line the number of the line in the input, from 1
   * @param job the job
   * @param out takes the line with its line feed, in UTF-8; it is left open
   * @return what was decided, to be counted
   * @throws org.brakerules.JobRefusedException if the job cannot be decided
   */
  CompactDecision write(long line, BrakeJob job, OutputStream out) throws IOException;
}
