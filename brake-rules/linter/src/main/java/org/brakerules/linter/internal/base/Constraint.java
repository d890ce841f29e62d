package org.brakerules.linter.internal.base;

import java.util.List;
import java.util.Optional;
import org.brakerules.linter.internal.text.Token;

/**
 * One condition in the brackets of a pattern: a variable that names a property, or comparisons
 * joined by {@code ||}. A condition outside the rule language is neither.
 *
 * @param text as written
 * @param tokens its tokens
 * @param binding the variable and the property, if it names one
 * @param comparisons the comparisons, if it compares
 */
public record Constraint(
    String text, List<Token> tokens, Optional<Binding> binding, List<Comparison> comparisons) {

  /**
   * A variable for a property.
   *
   * @param variable the variable
   * @param property the property
   */
  public record Binding(Token variable, Token property) {}

  /** Whether it belongs to the rule language. */
  public boolean readable() {
    return binding.isPresent() || !comparisons.isEmpty();
  }

  /** Where it starts. */
  public int offset() {
    return tokens.get(0).offset();
  }
}
