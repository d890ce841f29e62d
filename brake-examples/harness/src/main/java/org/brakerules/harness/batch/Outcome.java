package org.brakerules.harness.batch;

import org.brakerules.BrakeRules;
import org.brakerules.harness.batch.Tally.Count;

/** What a batch came to, in numbers and to be shown. The same input gives the same text. */
public final class Outcome {

  private final Summary summary;

  Outcome(BrakeRules rules, Tally tally) {
    this.summary = new Summary(rules, tally);
  }

  /** How many jobs were decided. */
  public long jobs() {
    return summary.tally().count(Count.JOBS);
  }

  /** How many lines have no decision. */
  public long rejects() {
    return summary.tally().rejects();
  }

  /** How many of these met a mistake in this program. */
  public long failures() {
    return summary.tally().count(Reject.Kind.FAILURE);
  }

  /** For a terminal. */
  public String text() {
    return SummaryText.of(summary);
  }

  /** For a program. */
  public String json() {
    return SummaryJson.of(summary);
  }

  /** As a drawing, in SVG. */
  public String chart() {
    return SummaryChart.of(summary);
  }
}
