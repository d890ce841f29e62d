package org.brakerules.calc;

import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;

/**
 * Where a formula comes from, and how far its result can be relied on.
 *
 * @param standing how far the source can be relied on
 * @param source what a reader can look for, such as {@code 49 CFR 393.47(e)(2)}; for our own
 *     arithmetic what it rests on
 * @param kind whether the result follows from what was read, or from a model of the brake
 */
public record Basis(Standing standing, String source, Kind kind) {

  /** How a result follows from what was read. */
  public enum Kind {
    /** By exact arithmetic. */
    EXACT,
    /** By a model of the brake, good for comparing; no limit takes it. */
    ESTIMATE
  }

  /** Exact arithmetic on a rule that stands somewhere. */
  public static Basis exact(Standing standing, String source) {
    return new Basis(standing, source, Kind.EXACT);
  }

  /** Exact arithmetic on a limit: its source as a report names it. */
  public static Basis of(Source source) {
    boolean byTitle =
        switch (source.standing()) {
          case MAKER, COMMON_PRACTICE, MEMORY, DERIVED -> true;
          case LAW, LAW_ELSEWHERE, STANDARD, GOVERNMENT, PRESS -> false;
        };
    String name = byTitle ? source.title() : source.id();
    String clause = source.clause().isEmpty() ? "" : ", " + source.clause();
    return exact(source.standing(), name + clause);
  }

  /** A model of the brake that stands somewhere. */
  public static Basis estimate(Standing standing, String source) {
    return new Basis(standing, source, Kind.ESTIMATE);
  }

  /** The basis in a sentence, such as {@code lever of arm and cam (derived, estimate)}. */
  public String inWords() {
    String trust = kind == Kind.ESTIMATE ? ", estimate" : "";
    return source + " (" + standing.inWords() + trust + ")";
  }
}
