package org.brakerules.harness.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.util.function.Function;
import org.brakerules.BrakeRules;
import org.brakerules.model.job.BrakeJob;

/** Lines that name rules, limits and points by their ids; a key before them says what they are. */
public final class CompactForm implements Form {

  private final Function<BrakeJob, CompactDecision> decider;
  private final CompactLine line;
  private final String key;

  /**
   * Chooses who decides.
   *
   * @param rules the rule base whose names the lines use
   * @param decider decides a job; threads ask it at once
   */
  public CompactForm(BrakeRules rules, Function<BrakeJob, CompactDecision> decider) {
    LimitNames limits = new LimitNames(rules.limits());
    this.decider = decider;
    this.line = new CompactLine(limits);
    this.key = Key.of(rules, limits);
  }

  /** The decisions of a rule base. */
  public static Form of(BrakeRules rules) {
    return new CompactForm(rules, job -> CompactDecision.of(rules.decide(job)));
  }

  @Override
  public String name() {
    return "compact";
  }

  @Override
  public String heading() {
    return key;
  }

  @Override
  public CompactDecision write(long number, BrakeJob job, OutputStream out) throws IOException {
    CompactDecision decision = decider.apply(job);
    line.write(number, decision, out);
    return decision;
  }
}
