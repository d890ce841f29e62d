package org.brakerules.model.decision;

/** How far a source can be relied on. */
public enum Standing {
  /** A law or regulation. */
  LAW("law"),
  /** A law or regulation of another place, which is none under the rule set of the job. */
  LAW_ELSEWHERE("law of another place"),
  /** A published standard or recommended practice. */
  STANDARD("standard"),
  /** A public government manual, handbook or investigation board. */
  GOVERNMENT("government manual"),
  /** The vehicle's or part's own maker, as supplied by the shop. */
  MAKER("maker"),
  /** The trade press. */
  PRESS("trade press"),
  /** Common practice, no source. */
  COMMON_PRACTICE("common practice, no source"),
  /** From memory, not read again. */
  MEMORY("from memory"),
  /** Our own arithmetic. */
  DERIVED("derived");

  private final String inWords;

  Standing(String inWords) {
    this.inWords = inWords;
  }

  /** The standing in a sentence. */
  public String inWords() {
    return inWords;
  }
}
