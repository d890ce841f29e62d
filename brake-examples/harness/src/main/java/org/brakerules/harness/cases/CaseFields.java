package org.brakerules.harness.cases;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The keys of one case that the linter finds nothing wrong with. */
record CaseFields(JsonNode written) {

  String text(String key) {
    return written.path(key).asText();
  }

  /** The texts of a list; a text alone is a list of one. */
  List<String> texts(String key) {
    return texts(written.path(key));
  }

  Map<String, List<String>> textsByName(String key) {
    Map<String, List<String>> texts = new LinkedHashMap<>();
    written
        .path(key)
        .properties()
        .forEach(member -> texts.put(member.getKey(), texts(member.getValue())));
    return texts;
  }

  Map<String, String> textByName(String key) {
    Map<String, String> texts = new LinkedHashMap<>();
    written
        .path(key)
        .properties()
        .forEach(member -> texts.put(member.getKey(), member.getValue().asText()));
    return texts;
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    if (list.isValueNode()) {
      texts.add(list.asText());
    } else {
      list.forEach(one -> texts.add(one.asText()));
    }
    return texts;
  }
}
