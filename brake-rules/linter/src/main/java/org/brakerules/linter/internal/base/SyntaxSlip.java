package org.brakerules.linter.internal.base;

import java.util.List;
import java.util.Optional;
import org.brakerules.linter.internal.text.SourceText;
import org.brakerules.linter.internal.text.Token;

/** Says in plain words why a rule cannot be parsed. */
final class SyntaxSlip {

  private static final String ORDER =
      "write rule, metadata, when, patterns, then, verdict, end, each once";

  private SyntaxSlip() {}

  static Mistake explain(SourceText source, RuleBlock block, int offset) {
    Optional<Token> found =
        block.tokens().stream().filter(token -> token.end() > offset).findFirst();
    boolean ended = block.tokens().stream().anyMatch(token -> token.is("end"));
    int place = found.map(Token::offset).orElse(block.start());
    String message =
        "the rule cannot be read"
            + found.map(token -> " from \"" + token.text() + "\" on").orElse(" to its end");
    return new Mistake(source.spot(place), message, remedy(found, ended, block.tokens()));
  }

  /** A rule that the rule engine takes for another one than we do. */
  static Mistake secondThen(SourceText source, RuleBlock block) {
    List<Token> thens = block.tokens().stream().filter(token -> token.is("then")).toList();
    return thens.size() > 1
        ? new Mistake(source.spot(thens.get(1).offset()), "the rule has a second then", ORDER)
        : new Mistake(source.spot(block.start()), "the rule has no clear beginning or end", ORDER);
  }

  private static String remedy(Optional<Token> found, boolean ended, List<Token> tokens) {
    if (!ended) {
      return "close the rule with \"end\"";
    }
    if (found.filter(token -> token.is("=")).isPresent()) {
      return "write == to compare";
    }
    if (count(tokens, "(") != count(tokens, ")")) {
      return "close every bracket; there are %d \"(\" and %d \")\""
          .formatted(count(tokens, "("), count(tokens, ")"));
    }
    return "look there or just before it for a missing comma, bracket or keyword; " + ORDER;
  }

  private static long count(List<Token> tokens, String symbol) {
    return tokens.stream().filter(token -> token.is(symbol)).count();
  }
}
