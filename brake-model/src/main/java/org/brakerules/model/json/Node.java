package org.brakerules.model.json;

import java.util.List;
import java.util.Map;

/** One value of a document, with its spot. */
sealed interface Node {

  /** Where the value begins. */
  Spot spot();

  /** The value as messages show it. */
  String shown();

  /** A text. */
  record Text(Spot spot, String value) implements Node {
    @Override
    public String shown() {
      return Shown.quoted(value);
    }
  }

  /** A number, kept as written: working out 1e999999999 would fill the memory. */
  record Digits(Spot spot, String written) implements Node {
    @Override
    public String shown() {
      return written;
    }
  }

  /** True, false or null. */
  record Word(Spot spot, String written) implements Node {
    @Override
    public String shown() {
      return written;
    }

    boolean isNull() {
      return written.equals("null");
    }
  }

  /** An array. */
  record Items(Spot spot, List<Node> values) implements Node {
    @Override
    public String shown() {
      return values.isEmpty() ? "an empty array" : "an array";
    }
  }

  /** An object. */
  record Members(Spot spot, Map<String, Member> byName) implements Node {
    @Override
    public String shown() {
      return "an object";
    }
  }

  /**
   * One field of an object.
   *
   * @param nameSpot where its name begins
   * @param value its value
   */
  record Member(Spot nameSpot, Node value) {}
}
