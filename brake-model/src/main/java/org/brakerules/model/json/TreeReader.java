package org.brakerules.model.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Turns the text of a document into a tree whose values know where they stand. */
final class TreeReader {

  private final DocumentKind kind;
  private final String document;
  private final JsonParser tokens;
  private final Problems problems;

  private TreeReader(DocumentKind kind, String document, JsonParser tokens, Problems problems) {
    this.kind = kind;
    this.document = document;
    this.tokens = tokens;
    this.problems = problems;
  }

  private static String withinLimits() {
    return "at most %d levels, texts of %d characters, names of %d and numbers of %d"
        .formatted(
            StrictJson.MOST_LEVELS,
            StrictJson.MOST_TEXT_CHARACTERS,
            StrictJson.MOST_NAME_CHARACTERS,
            StrictJson.MOST_NUMBER_CHARACTERS);
  }

  /**
   * Reads the tree; a field that is there twice is a problem, of which the first is kept.
   *
   * @throws InvalidJobException if the document is not JSON, or larger than any of its kind
   */
  static Node read(DocumentKind kind, String document, Problems problems) {
    try (JsonParser tokens = StrictJson.parser(document)) {
      return new TreeReader(kind, document, tokens, problems).document();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Node document() throws IOException {
    try {
      Node root = node(null, "", tokens.nextToken());
      refuseMore();
      return root;
    } catch (StreamConstraintsException tooLarge) {
      JsonLocation where = tokens.currentLocation();
      throw refused(
          where.getLineNr(),
          where.getColumnNr(),
          "more than any " + kind.inFull() + " has",
          withinLimits());
    } catch (JsonParseException syntax) {
      throw notJson(syntax.getLocation());
    }
  }

  private void refuseMore() throws IOException {
    try {
      if (tokens.nextToken() != null) {
        throw more(tokens.currentTokenLocation());
      }
    } catch (JsonParseException syntax) {
      throw more(syntax.getLocation());
    }
  }

  private InvalidJobException more(JsonLocation where) {
    String found = new SyntaxSlip(document, (int) where.getCharOffset()).found();
    return refused(
        where.getLineNr(),
        where.getColumnNr(),
        found,
        "nothing after the end of the " + kind.inShort());
  }

  private Node node(@Nullable Spot parent, String step, @Nullable JsonToken token)
      throws IOException {
    if (token == null) {
      throw notJson(tokens.currentLocation());
    }
    Spot spot = spot(parent, step);
    return switch (token) {
      case START_OBJECT -> object(spot);
      case START_ARRAY -> array(spot);
      case VALUE_STRING -> new Node.Text(spot, tokens.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node.Digits(spot, tokens.getText());
      default -> new Node.Word(spot, tokens.getText());
    };
  }

  private Node object(Spot spot) throws IOException {
    Map<String, Node.Member> byName = new LinkedHashMap<>();
    while (tokens.nextToken() == JsonToken.FIELD_NAME) {
      String name = tokens.currentName();
      Spot nameSpot = spot(spot, name);
      Node value = node(spot, name, tokens.nextToken());
      Node.Member first = byName.putIfAbsent(name, new Node.Member(nameSpot, value));
      if (first != null) {
        String found = "the field again, first at " + first.nameSpot().inWords();
        problems.add(nameSpot, found, "each field once");
      }
    }
    return new Node.Members(spot, byName);
  }

  private Node array(Spot spot) throws IOException {
    List<Node> values = new ArrayList<>();
    for (JsonToken next = tokens.nextToken();
        next != JsonToken.END_ARRAY;
        next = tokens.nextToken()) {
      values.add(node(spot, Integer.toString(values.size()), next));
    }
    return new Node.Items(spot, values);
  }

  private Spot spot(@Nullable Spot parent, String step) {
    JsonLocation start = tokens.currentTokenLocation();
    return new Spot(parent, step, start.getLineNr(), start.getColumnNr());
  }

  private InvalidJobException notJson(JsonLocation where) {
    int offset = (int) where.getCharOffset();
    SyntaxSlip slip = SyntaxSlip.at(document, offset);
    int column = where.getColumnNr() - (offset - slip.offset());
    return refused(where.getLineNr(), column, slip.found(), slip.expected());
  }

  private InvalidJobException refused(int line, int column, String found, String expected) {
    String pointer = tokens.getParsingContext().pathAsPointer().toString();
    return new InvalidJobException(List.of(new Problem(pointer, line, column, found, expected)));
  }
}
