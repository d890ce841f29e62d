package org.brakerules.linter.internal.cases;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.brakerules.linter.internal.text.Spot;

/**
 * One case as it was written.
 *
 * @param written what was written
 * @param spots where
 */
public record AuthoredCase(JsonNode written, Spots spots) {

  /**
   * A word of a case.
   *
   * @param text the word
   * @param spot where it stands
   */
  public record Word(String text, Spot spot) {}

  /** What it shows; empty if it does not say. */
  public String name() {
    return written.path(CaseKey.CASE.word()).asText().strip();
  }

  /** Whether it has a key, and something behind it. */
  public boolean has(CaseKey key) {
    return written.hasNonNull(key.word());
  }

  /** A message about it, with its name. */
  public String says(String message) {
    return (name().isEmpty() ? "a case without a name: " : "case \"" + name() + "\": ") + message;
  }

  /** The words of a list behind a key; a word alone is a list of one. */
  public List<Word> list(CaseKey key) {
    return list("/" + key.word(), written.path(key.word()));
  }

  /** The names below a key. */
  public List<Word> names(CaseKey key) {
    List<Word> names = new ArrayList<>();
    written
        .path(key.word())
        .fieldNames()
        .forEachRemaining(
            name -> names.add(new Word(name, spots.key(MarkedTree.below(pointer(key), name)))));
    return names;
  }

  /** The words of the lists behind the names below a key. */
  public List<Word> wordsBelow(CaseKey key) {
    List<Word> words = new ArrayList<>();
    written
        .path(key.word())
        .properties()
        .forEach(
            member ->
                words.addAll(
                    list(MarkedTree.below(pointer(key), member.getKey()), member.getValue())));
    return words;
  }

  private List<Word> list(String pointer, JsonNode node) {
    List<Word> words = new ArrayList<>();
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        words.addAll(list(pointer + "/" + i, node.get(i)));
      }
    } else if (node.isValueNode() && !node.isNull()) {
      words.add(new Word(node.asText(), spots.value(pointer)));
    }
    return words;
  }

  private static String pointer(CaseKey key) {
    return "/" + key.word();
  }
}
