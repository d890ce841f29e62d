package org.brakerules.linter.cases;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

/** Where in a case stands what its job has, both as JSON Pointers (RFC 6901). */
final class Origins {

  private final Map<String, String> byPointer = new HashMap<>();

  /** A name as one step of a pointer. */
  static String step(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  void add(String pointer, String origin) {
    byPointer.put(pointer, origin);
  }

  /** The fields of an owner that come from the fields of the same name elsewhere. */
  void addEach(String owner, String origin, Collection<String> names) {
    names.forEach(name -> add(owner + "/" + step(name), origin + "/" + step(name)));
  }

  /** The place in the case; empty if the case does not name it. */
  String of(String pointer) {
    String above = pointer;
    while (!above.isEmpty() && !byPointer.containsKey(above)) {
      above = above.substring(0, above.lastIndexOf('/'));
    }
    return byPointer.getOrDefault(above, "")
        + (above.isEmpty() ? "" : pointer.substring(above.length()));
  }
}
