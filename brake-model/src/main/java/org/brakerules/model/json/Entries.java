package org.brakerules.model.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/**
 * The entries of an array of objects, each of which becomes a record.
 *
 * @param array what the array is, for messages
 * @param entry what each of its entries is, for messages
 */
record Entries(String array, String entry, Problems problems) {

  /** The entries of a field that must have at least one. */
  List<Node> atLeastOne(Fields fields, String name) {
    Optional<Node> field = fields.required(name, array);
    List<Node> nodes = of(field);
    if (nodes.isEmpty()) {
      field.filter(Node.Items.class::isInstance).ifPresent(node -> problems.add(node, array));
    }
    return nodes;
  }

  /** The entries of an array; none if it is left out. */
  List<Node> of(Optional<Node> field) {
    if (field.isPresent() && field.get() instanceof Node.Items items) {
      return items.values();
    }
    field.ifPresent(node -> problems.add(node, array));
    return List.of();
  }

  /**
   * Reads each entry and builds its record.
   *
   * @param reader reads the fields of an entry and says how to build the record
   * @return the records of the entries without a problem
   */
  <T> List<T> each(List<Node> nodes, BiFunction<Node, Fields, Supplier<T>> reader) {
    List<T> records = new ArrayList<>();
    for (Node node : nodes) {
      int before = problems.count();
      Fields.of(node, entry, problems)
          .map(fields -> read(node, fields, reader))
          .filter(record -> problems.count() == before)
          .flatMap(record -> problems.build(node, record))
          .ifPresent(records::add);
    }
    return records;
  }

  private static <T> Supplier<T> read(
      Node node, Fields fields, BiFunction<Node, Fields, Supplier<T>> reader) {
    Supplier<T> record = reader.apply(node, fields);
    fields.refuseOthers();
    return record;
  }
}
