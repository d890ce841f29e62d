package org.brakerules.trial.provision;

import java.util.List;
import java.util.Locale;

/**
 * What a rule base lays down under one id, as far as a verdict can depend on it.
 *
 * @param kind what it is
 * @param id the id, such as {@code DRUM-010}
 * @param of what it is about, such as {@code drum.diameter}; empty for a source and a rule set. An
 *     id that is about something else was used again
 * @param lines its text, one line for each condition, row or source
 */
public record Provision(Kind kind, String id, String of, List<String> lines) {

  /** What a provision is. */
  public enum Kind {
    /** A rule. */
    RULE,
    /** A limit with all its rows. */
    LIMIT,
    /** An inspection point. */
    POINT,
    /** The standing of a source. */
    SOURCE,
    /** What a rule set asks of a vehicle. */
    RULE_SET;

    /** As records and reports write it, such as {@code rule-set}. */
    public String inWords() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Keeps its own copy. */
  public Provision {
    lines = List.copyOf(lines);
  }

  /** Whether both decide alike; the order of conditions and rows decides nothing. */
  public boolean decidesLike(Provision other) {
    return kind == other.kind
        && of.equals(other.of)
        && lines.stream().sorted().toList().equals(other.lines.stream().sorted().toList());
  }
}
