package org.brakerules.linter.internal.cases;

import java.util.HashMap;
import java.util.Map;
import org.brakerules.linter.internal.text.Spot;

/**
 * Where the keys and values of a case stand, by JSON Pointer (RFC 6901) below the case. What the
 * case does not have stands where the nearest thing around it stands.
 */
public final class Spots {

  private final Map<String, Spot> keys = new HashMap<>();
  private final Map<String, Spot> values = new HashMap<>();

  void addKey(String pointer, Spot spot) {
    keys.put(pointer, spot);
  }

  void addValue(String pointer, Spot spot) {
    values.put(pointer, spot);
  }

  /** Where a key stands; for what has no key, such as an entry of a list, where the value does. */
  public Spot key(String pointer) {
    return nearest(pointer, keys, values);
  }

  /** Where a value stands; for one that begins on a line below its key, where the key does. */
  public Spot value(String pointer) {
    Spot value = nearest(pointer, values, values);
    Spot key = nearest(pointer, keys, values);
    boolean isBelowKey = value.line() > key.line();
    return values.containsKey(pointer) && !isBelowKey ? value : key;
  }

  private static Spot nearest(String pointer, Map<String, Spot> first, Map<String, Spot> second) {
    String above = pointer;
    while (!above.isEmpty() && !first.containsKey(above) && !second.containsKey(above)) {
      above = above.substring(0, above.lastIndexOf('/'));
    }
    Spot spot = first.getOrDefault(above, second.get(above));
    if (spot == null) {
      throw new IllegalStateException("A case stands somewhere.");
    }
    return spot;
  }
}
