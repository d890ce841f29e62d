package org.brakerules.linter.internal.base;

import java.util.List;
import java.util.Optional;
import org.brakerules.linter.internal.text.Token;

/**
 * One rule as written, cut into its sections. Comments are left out of all but {@code tokens}.
 *
 * @param tokens everything from {@code rule} to {@code end}
 * @param name the name; empty if none stands after {@code rule}
 * @param metadata the metadata entries
 * @param attributes what else stands before {@code when}
 * @param conditions what stands between {@code when} and {@code then}
 * @param action what stands between {@code then} and {@code end}
 */
public record RuleBlock(
    List<Token> tokens,
    Optional<Token> name,
    List<Metadata> metadata,
    List<Token> attributes,
    List<Token> conditions,
    List<Token> action) {

  /** Where the rule starts. */
  public int start() {
    return tokens.get(0).offset();
  }

  /** Where the rule ends. */
  public int end() {
    return tokens.get(tokens.size() - 1).end();
  }

  /** Where the name stands, or else the rule. */
  public int nameOffset() {
    return name.map(Token::offset).orElse(start());
  }

  /** Where a keyword stands, or else the rule. */
  public int offsetOf(String keyword) {
    return tokens.stream()
        .filter(token -> token.is(keyword))
        .findFirst()
        .map(Token::offset)
        .orElse(start());
  }
}
