package org.brakerules.linter.internal.base;

import java.util.List;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/**
 * One comparison of a property with a value.
 *
 * @param property the property
 * @param operator the operator
 * @param value the value as written
 */
public record Comparison(Token property, Token operator, List<Token> value) {

  /** What the value is. */
  public enum ValueKind {
    TEXT,
    NUMBER,
    VARIABLE,
    /** Such as {@code Sign.SEEN}. */
    CONSTANT,
    OTHER
  }

  /** What the value is. */
  public ValueKind valueKind() {
    Token first = value.get(0);
    if (value.size() == 1) {
      return switch (first.kind()) {
        case TEXT -> ValueKind.TEXT;
        case NUMBER -> ValueKind.NUMBER;
        default -> first.isVariable() ? ValueKind.VARIABLE : ValueKind.OTHER;
      };
    }
    if (value.size() == 2 && first.is("-") && value.get(1).is(Kind.NUMBER)) {
      return ValueKind.NUMBER;
    }
    boolean constant =
        value.size() == 3
            && first.is(Kind.NAME)
            && value.get(1).is(".")
            && value.get(2).is(Kind.NAME);
    return constant ? ValueKind.CONSTANT : ValueKind.OTHER;
  }

  /** Whether the value is this constant. */
  public boolean isConstantOf(String type) {
    return valueKind() == ValueKind.CONSTANT && value.get(0).is(type);
  }

  /** The type of a constant. */
  public Token constantType() {
    return value.get(0);
  }

  /** The name of a constant. */
  public Token constant() {
    return value.get(2);
  }

  /** The value as it is written. */
  public String valueText() {
    return String.join("", value.stream().map(Token::text).toList());
  }
}
