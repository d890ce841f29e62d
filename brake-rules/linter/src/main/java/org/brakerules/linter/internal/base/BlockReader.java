package org.brakerules.linter.internal.base;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.linter.internal.text.SourceText;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;
import org.brakerules.linter.internal.text.Tokens;

/** Cuts a rule file into its rules, however broken they are. */
final class BlockReader {

  private final List<RuleBlock> blocks = new ArrayList<>();
  private final List<Token> outside = new ArrayList<>();
  private final List<Token> open = new ArrayList<>();

  BlockReader(SourceText source) {
    for (Token token : Tokens.of(source.text())) {
      read(token, source);
    }
    close();
  }

  List<RuleBlock> blocks() {
    return List.copyOf(blocks);
  }

  /** Everything before, between and after the rules. */
  List<Token> outside() {
    return List.copyOf(outside);
  }

  private void read(Token token, SourceText source) {
    if (token.is("rule") && source.startsLine(token.offset())) {
      close(); // a rule whose "end" was forgotten
      open.add(token);
    } else if (open.isEmpty()) {
      outside.add(token);
    } else {
      open.add(token);
      if (token.is("end")) {
        close();
      }
    }
  }

  private void close() {
    if (!open.isEmpty()) {
      blocks.add(block(List.copyOf(open)));
      open.clear();
    }
  }

  private static RuleBlock block(List<Token> tokens) {
    List<Token> plain = tokens.stream().filter(token -> !token.is(Kind.COMMENT)).toList();
    int then = indexOf("then", plain, 1, plain.size());
    int when = indexOf("when", plain, 1, then);
    int end = indexOf("end", plain, then, plain.size());
    boolean named = plain.size() > 1 && when > 1 && !plain.get(1).is(Kind.SYMBOL);
    HeadReader head = new HeadReader(plain.subList(named ? 2 : 1, Math.max(named ? 2 : 1, when)));
    return new RuleBlock(
        tokens,
        named ? Optional.of(plain.get(1)) : Optional.empty(),
        head.metadata(),
        head.attributes(),
        plain.subList(Math.min(when + 1, then), then),
        plain.subList(Math.min(then + 1, end), end));
  }

  /** The index of a keyword; where the search ends if it is not there. */
  private static int indexOf(String keyword, List<Token> tokens, int from, int to) {
    for (int i = from; i < to; i++) {
      if (tokens.get(i).is(keyword)) {
        return i;
      }
    }
    return to;
  }
}
