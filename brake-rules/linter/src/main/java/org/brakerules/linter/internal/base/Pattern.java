package org.brakerules.linter.internal.base;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.linter.internal.language.FactType;
import org.brakerules.linter.internal.language.Vocabulary;

/**
 * One pattern of a rule, such as {@code $part : Camshaft( flat == Sign.SEEN )}.
 *
 * @param type the fact type as written
 * @param offset where the pattern starts
 * @param typeOffset where the fact type stands
 * @param variable the variable that names the fact; empty if none
 * @param negated whether it stands under {@code not}
 * @param constraints what stands in its brackets
 */
public record Pattern(
    String type,
    int offset,
    int typeOffset,
    Optional<String> variable,
    boolean negated,
    List<Constraint> constraints) {

  /** The fact type; empty if it is not known. */
  public Optional<FactType> fact() {
    return Vocabulary.fact(type);
  }

  /** All comparisons in its constraints. */
  public Stream<Comparison> comparisons() {
    return constraints.stream().flatMap(constraint -> constraint.comparisons().stream());
  }
}
