package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.Optional;
import org.brakerules.linter.internal.language.VerdictWord;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/** What stands after {@code then}, read as one verdict. */
record VerdictCall(List<Token> action) {

  /** The word after {@code verdict.}; empty if the action does not begin that way. */
  Optional<Token> word() {
    boolean begins =
        action.size() > 2
            && action.get(0).is("verdict")
            && action.get(1).is(".")
            && action.get(2).is(Kind.NAME);
    return begins ? Optional.of(action.get(2)) : Optional.empty();
  }

  /** The verdict; empty if there is no such word. */
  Optional<VerdictWord> verdict() {
    return word().flatMap(word -> VerdictWord.find(word.text()));
  }

  /** The inspection point it names; empty if it names none. */
  Optional<Token> point() {
    return isWhole()
        ? action.stream().filter(token -> token.is(Kind.TEXT)).findFirst()
        : Optional.empty();
  }

  /** Whether the action is this verdict of {@code $part} and nothing else. */
  boolean isWhole() {
    return verdict().filter(verdict -> arguments().equals(expected(verdict))).isPresent();
  }

  private static List<String> expected(VerdictWord verdict) {
    return verdict.takesPoint()
        ? List.of("(", "$part", ",", "TEXT", ")", ";")
        : List.of("(", "$part", ")", ";");
  }

  private List<String> arguments() {
    return action.stream()
        .skip(3)
        .map(token -> token.is(Kind.TEXT) ? "TEXT" : token.text())
        .toList();
  }
}
