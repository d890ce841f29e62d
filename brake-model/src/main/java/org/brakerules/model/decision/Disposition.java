package org.brakerules.model.decision;

/** What to do with a part, from best to worst. Of several the worst wins. */
public enum Disposition {
  /** The part goes back. */
  REUSE,
  /** The part is cleaned and goes back. */
  CLEAN,
  /** The part is adjusted, shimmed, turned or bolted again. */
  ADJUST,
  /** The part cannot be decided until something is looked at or measured. */
  UNDECIDED,
  /** The part is replaced. */
  REPLACE;

  /** The worse of two. */
  public Disposition worse(Disposition other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
