package org.brakerules.model.reading;

/** Two readings of one wheel end that cannot both be right. */
public enum Contradiction {
  /** The applied stroke is not longer than the free stroke of the same moment. */
  STROKES,
  /** The journal of the camshaft is wider than the bushing it turns in. */
  JOURNAL_IN_BORE,
  /** The thinnest point of the lining is thicker than another place of it. */
  THINNEST_POINT
}
