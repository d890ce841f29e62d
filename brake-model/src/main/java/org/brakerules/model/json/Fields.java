package org.brakerules.model.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.text.NearestName;

/** The fields of one object while it is read. It knows which fields were asked for. */
final class Fields {

  private final Node.Members object;
  private final Problems problems;
  private final List<String> known = new ArrayList<>();
  private int met;

  private Fields(Node.Members object, Problems problems) {
    this.object = object;
    this.problems = problems;
  }

  /** The fields of an object; anything else is a problem. */
  static Optional<Fields> of(Node node, String expected, Problems problems) {
    if (node instanceof Node.Members object) {
      return Optional.of(new Fields(object, problems));
    }
    problems.add(node, expected);
    return Optional.empty();
  }

  /** The value of a field; empty if it is left out. A null is a problem. */
  Optional<Node> optional(String name) {
    return stated(name, "a value; leave the field out if it is not known");
  }

  /** The value of a field; leaving it out is a problem. */
  Optional<Node> required(String name, String expected) {
    if (!has(name)) {
      problems.add(object.spot(), "no " + Shown.quoted(name), expected);
    }
    return stated(name, expected);
  }

  private Optional<Node> stated(String name, String expected) {
    known.add(name);
    Node.Member member = object.byName().get(name);
    if (member == null) {
      return Optional.empty();
    }
    met++;
    if (member.value() instanceof Node.Word word && word.isNull()) {
      problems.add(word, expected);
      return Optional.empty();
    }
    return Optional.of(member.value());
  }

  /** Whether the field is there. */
  boolean has(String name) {
    return object.byName().containsKey(name);
  }

  /** Treats every field as asked for. */
  void acceptOthers() {
    met = object.byName().size();
  }

  /** Refuses every field that was not asked for. */
  void refuseOthers() {
    if (met == object.byName().size()) {
      return;
    }
    object
        .byName()
        .forEach(
            (name, member) -> {
              if (!known.contains(name)) {
                problems.add(member.nameSpot(), "an unknown field", nearest(name));
              }
            });
  }

  private String nearest(String name) {
    return NearestName.of(name, known)
        .map(near -> Shown.quoted(near) + ", the nearest known field")
        .orElseGet(() -> "one of the fields " + Shown.oneOf(known));
  }
}
