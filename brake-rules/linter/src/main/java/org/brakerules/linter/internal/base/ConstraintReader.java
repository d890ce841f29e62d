package org.brakerules.linter.internal.base;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Constraint.Binding;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;
import org.brakerules.linter.internal.text.Tokens;

/** Reads one condition of a pattern. */
final class ConstraintReader {

  private static final Set<String> OPERATORS = Set.of("==", "!=", "<", ">", "<=", ">=");

  private ConstraintReader() {}

  static Constraint read(String text, int offset) {
    List<Token> tokens = Tokens.of(text, offset);
    Optional<Binding> binding = binding(tokens);
    List<Comparison> comparisons = binding.isPresent() ? List.of() : comparisons(tokens);
    return new Constraint(text, tokens, binding, comparisons);
  }

  private static Optional<Binding> binding(List<Token> tokens) {
    boolean binds =
        tokens.size() == 3
            && tokens.get(0).isVariable()
            && tokens.get(1).is(":")
            && tokens.get(2).is(Kind.NAME);
    return binds ? Optional.of(new Binding(tokens.get(0), tokens.get(2))) : Optional.empty();
  }

  /** All comparisons, or none if one of them is none. */
  private static List<Comparison> comparisons(List<Token> tokens) {
    List<Comparison> comparisons = new ArrayList<>();
    for (List<Token> alternative : alternatives(tokens)) {
      Optional<Comparison> comparison = comparison(alternative);
      if (comparison.isEmpty()) {
        return List.of();
      }
      comparisons.add(comparison.get());
    }
    return List.copyOf(comparisons);
  }

  private static List<List<Token>> alternatives(List<Token> tokens) {
    List<List<Token>> alternatives = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < tokens.size(); i++) {
      if (tokens.get(i).is("||")) {
        alternatives.add(tokens.subList(start, i));
        start = i + 1;
      }
    }
    alternatives.add(tokens.subList(start, tokens.size()));
    return alternatives;
  }

  private static Optional<Comparison> comparison(List<Token> tokens) {
    boolean compares =
        tokens.size() >= 3
            && tokens.get(0).is(Kind.NAME)
            && !tokens.get(0).isVariable()
            && OPERATORS.contains(tokens.get(1).text());
    return compares
        ? Optional.of(
                new Comparison(tokens.get(0), tokens.get(1), tokens.subList(2, tokens.size())))
            .filter(comparison -> comparison.valueKind() != ValueKind.OTHER)
        : Optional.empty();
  }
}
