package org.brakerules.linter.internal.base;

import java.util.ArrayList;
import java.util.List;
import org.brakerules.linter.internal.text.Token;

/** Tells metadata from attributes in what stands between the name of a rule and its conditions. */
final class HeadReader {

  private final List<Metadata> metadata = new ArrayList<>();
  private final List<Token> attributes = new ArrayList<>();
  private final List<Token> tokens;
  private int at;

  HeadReader(List<Token> tokens) {
    this.tokens = tokens;
    while (at < tokens.size()) {
      if (tokens.get(at).is("@") && at + 1 < tokens.size()) {
        readMetadata();
      } else {
        attributes.add(tokens.get(at++));
      }
    }
  }

  List<Metadata> metadata() {
    return List.copyOf(metadata);
  }

  List<Token> attributes() {
    return List.copyOf(attributes);
  }

  private void readMetadata() {
    Token key = tokens.get(at + 1);
    at += 2;
    List<Token> content = new ArrayList<>();
    if (at < tokens.size() && tokens.get(at).is("(")) {
      int depth = 0;
      do {
        Token token = tokens.get(at++);
        depth += token.is("(") ? 1 : token.is(")") ? -1 : 0;
        content.add(token);
      } while (depth > 0 && at < tokens.size() && !tokens.get(at).is("@"));
      content.remove(0);
      if (depth == 0) {
        content.remove(content.size() - 1);
      }
    }
    metadata.add(new Metadata(key, List.copyOf(content)));
  }
}
