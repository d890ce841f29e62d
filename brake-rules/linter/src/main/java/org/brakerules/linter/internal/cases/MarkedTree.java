package org.brakerules.linter.internal.cases;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.List;
import org.brakerules.linter.internal.base.Mistake;
import org.brakerules.linter.internal.text.Spot;

/** Reads a piece of YAML as a tree, and remembers where everything in it stands. */
final class MarkedTree {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final String file;
  private final YAMLParser parser;
  private final List<Mistake> mistakes;
  private final Spots spots = new Spots();

  MarkedTree(String file, YAMLParser parser, List<Mistake> mistakes) {
    this.file = file;
    this.parser = parser;
    this.mistakes = mistakes;
  }

  /** The pointer of a member. */
  static String below(String pointer, String name) {
    return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  Spots spots() {
    return spots;
  }

  /** Where the current token stands. */
  static Spot spot(String file, YAMLParser parser) {
    JsonLocation location = parser.currentTokenLocation();
    return new Spot(file, Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
  }

  /** The value that the current token begins. */
  JsonNode read(String pointer) throws IOException {
    spots.addValue(pointer, here());
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(pointer);
      case START_ARRAY -> array(pointer);
      default -> scalar();
    };
  }

  private ObjectNode object(String pointer) throws IOException {
    ObjectNode object = NODES.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      String member = below(pointer, name);
      Spot spot = here();
      if (object.has(name)) {
        mistakes.add(
            new Mistake(
                spot,
                "\"" + name + "\" is there twice, and the first one is lost",
                "write it once, with both beneath it"));
      }
      spots.addKey(member, spot);
      parser.nextToken();
      object.set(name, read(member));
    }
    return object;
  }

  private ArrayNode array(String pointer) throws IOException {
    ArrayNode array = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      array.add(read(pointer + "/" + array.size()));
    }
    return array;
  }

  private JsonNode scalar() throws IOException {
    if (parser.isCurrentAlias()) {
      mistakes.add(
          new Mistake(
              here(),
              "the star points elsewhere, which nobody follows",
              "write out what is meant, or put a text that begins with a star in quotes"));
    }
    return switch (parser.currentToken()) {
      case VALUE_NULL -> NODES.nullNode();
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NUMBER_INT -> NODES.numberNode(parser.getBigIntegerValue());
      case VALUE_NUMBER_FLOAT ->
          parser.isNaN()
              ? NODES.textNode(parser.getText())
              : NODES.numberNode(parser.getDecimalValue());
      default -> NODES.textNode(parser.getText());
    };
  }

  private Spot here() {
    return spot(file, parser);
  }
}
