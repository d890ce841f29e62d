package org.brakerules.linter.internal.base;

import java.util.List;

/**
 * The conditions of a rule as the parser of the rule engine understands them.
 *
 * @param patterns the patterns, in the order written
 * @param constructs everything else
 */
public record Conditions(List<Pattern> patterns, List<Construct> constructs) {

  /** No conditions. */
  public static final Conditions NONE = new Conditions(List.of(), List.of());

  /** Keeps its own copies. */
  public Conditions {
    patterns = List.copyOf(patterns);
    constructs = List.copyOf(constructs);
  }
}
