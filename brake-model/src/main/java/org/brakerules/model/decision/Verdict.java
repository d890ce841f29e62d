package org.brakerules.model.decision;

/** What one rule says about a part. */
public enum Verdict {
  /** Nothing speaks against the part. */
  REUSE(Disposition.REUSE),
  /** Clean it; it goes back. */
  CLEAN(Disposition.CLEAN),
  /** Adjust, shim or fit it again. */
  ADJUST(Disposition.ADJUST),
  /** Look at a named point of it first. */
  LOOK_AT(Disposition.UNDECIDED),
  /** Measure a named point of it again, after the other decisions are carried out. */
  MEASURE_AGAIN(Disposition.UNDECIDED),
  /** Something its decision needs is not known. */
  UNDECIDED(Disposition.UNDECIDED),
  /** Stop work on it. */
  HOLD(Disposition.UNDECIDED),
  /** Replace it. */
  REPLACE(Disposition.REPLACE);

  private final Disposition disposition;

  Verdict(Disposition disposition) {
    this.disposition = disposition;
  }

  /** The disposition the verdict leads to when nothing worse is said. */
  public Disposition disposition() {
    return disposition;
  }
}
