package org.brakerules.model.layout;

/** How an automatic adjuster senses the stroke. */
public enum ArmKind {
  /** By a link to the clevis. */
  LINKED,
  /** By a control arm anchored to a bracket. */
  ANCHORED,
  /** Not at all: the adjuster is manual. */
  NONE,
  UNKNOWN
}
