package org.brakerules.linter.internal.base;

import java.util.List;
import java.util.Optional;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/**
 * One metadata entry of a rule as written, such as {@code @source("COMMON-PRACTICE")}.
 *
 * @param key the key, without the {@code @}
 * @param content what stands in the brackets
 */
public record Metadata(Token key, List<Token> content) {

  /** The one text in the brackets; empty if there is anything else. */
  public Optional<Token> text() {
    return content.size() == 1 && content.get(0).is(Kind.TEXT)
        ? Optional.of(content.get(0))
        : Optional.empty();
  }
}
