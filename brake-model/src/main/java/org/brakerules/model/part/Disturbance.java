package org.brakerules.model.part;

/** Whether a part was removed, or separated from its mate, in this job. */
public enum Disturbance {
  /** As the scope of the job implies, see {@link PartKind#disturbedFrom()}. */
  BY_SCOPE,
  /** Removed or separated, whatever the scope says. */
  DISTURBED,
  /** Left alone, whatever the scope says. */
  LEFT_ALONE
}
