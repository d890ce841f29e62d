package org.brakerules.internal.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One rule, taken apart.
 *
 * @param name its whole name, id first
 * @param metadata its metadata by key
 * @param patterns its patterns in the order written
 * @param action its one verdict
 */
public record WrittenRule(
    String name,
    Map<String, String> metadata,
    List<WrittenPattern> patterns,
    WrittenAction action) {

  /** Keeps its own copies. */
  public WrittenRule {
    metadata = Map.copyOf(metadata);
    patterns = List.copyOf(patterns);
  }

  /** The first word of the name. */
  public String id() {
    return name.substring(0, name.indexOf(' '));
  }

  /** The same rule under the id of a variant. */
  public WrittenRule asVariant(int number) {
    return new WrittenRule(
        id() + "~" + number + name.substring(name.indexOf(' ')), metadata, patterns, action);
  }

  /** The same rule with another action. */
  public WrittenRule with(WrittenAction other) {
    return new WrittenRule(name, metadata, patterns, other);
  }

  /** The same rule with another pattern in the place of one. */
  public WrittenRule with(int place, WrittenPattern other) {
    List<WrittenPattern> changed = new ArrayList<>(patterns);
    changed.set(place, other);
    return new WrittenRule(name, metadata, changed, action);
  }

  /** The same rule without one of its patterns. */
  public WrittenRule without(int place) {
    List<WrittenPattern> changed = new ArrayList<>(patterns);
    changed.remove(place);
    return new WrittenRule(name, metadata, changed, action);
  }
}
