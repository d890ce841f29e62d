package org.brakerules.trial;

import java.util.Set;
import org.brakerules.model.job.BrakeJob;

/** One case of a rule base on trial: a job, and what is expected of the answer. */
public interface TrialCase {

  /** The component it lies beside, such as {@code camshaft-bushing}. */
  String component();

  /** What it says, in the words of its author. */
  String name();

  /** The job. */
  BrakeJob job();

  /** The rules it expects to fire or not to fire. */
  Set<String> rules();

  /** Whether the rule base answers as expected. */
  boolean isAsExpected(TrialRules rules);
}
