package org.brakerules.harness.cases;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.brakerules.model.text.NearestName;

/** The fields of one case while it is read. It knows which fields were asked for. */
final class CaseFields {

  private final String where;
  private final JsonNode node;
  private final Set<String> known = new LinkedHashSet<>();

  CaseFields(String where, JsonNode node) {
    this.where = where;
    this.node = node;
    if (!node.isObject()) {
      throw mistake("a case is a list entry with fields, the first of them \"case\"");
    }
  }

  String text(String name) {
    return field(name).map(JsonNode::asText).orElse("");
  }

  /** Whether a field is this text and nothing else. */
  boolean says(String name, String text) {
    return field(name).filter(JsonNode::isTextual).map(JsonNode::asText).equals(Optional.of(text));
  }

  /** The texts of a list; a text alone is a list of one. */
  List<String> texts(String name) {
    return field(name).map(CaseFields::texts).orElseGet(List::of);
  }

  Map<String, List<String>> textsByName(String name) {
    Map<String, List<String>> texts = new LinkedHashMap<>();
    byName(name).forEach((key, list) -> texts.put(key, texts(list)));
    return texts;
  }

  Map<String, String> textByName(String name) {
    Map<String, String> texts = new LinkedHashMap<>();
    byName(name).forEach((key, value) -> texts.put(key, value.asText()));
    return texts;
  }

  Map<String, JsonNode> byName(String name) {
    return field(name).map(value -> members(name, value)).orElseGet(Map::of);
  }

  Map<String, Map<String, JsonNode>> byNameTwice(String name) {
    Map<String, Map<String, JsonNode>> all = new LinkedHashMap<>();
    byName(name).forEach((key, value) -> all.put(key, members(name + "/" + key, value)));
    return all;
  }

  /** Refuses every field that was not asked for. */
  void refuseOthers() {
    node.fieldNames()
        .forEachRemaining(
            name -> {
              if (!known.contains(name)) {
                throw mistake("\"" + name + "\" is no field of a case; " + hint(name));
              }
            });
  }

  private String hint(String name) {
    return NearestName.of(name, known)
        .map(near -> "did you mean \"" + near + "\"?")
        .orElseGet(() -> "write one of " + String.join(", ", known));
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    if (list.isArray()) {
      list.forEach(one -> texts.add(one.asText()));
    } else {
      texts.add(list.asText());
    }
    return texts;
  }

  private Optional<JsonNode> field(String name) {
    known.add(name);
    return Optional.ofNullable(node.get(name)).filter(value -> !value.isNull());
  }

  private Map<String, JsonNode> members(String name, JsonNode value) {
    if (!value.isObject()) {
      throw mistake("\"" + name + "\" has fields below it, each with its value");
    }
    Map<String, JsonNode> members = new LinkedHashMap<>();
    value.properties().forEach(member -> members.put(member.getKey(), member.getValue()));
    return members;
  }

  InvalidCaseException mistake(String what) {
    return new InvalidCaseException(where + ": " + what);
  }
}
