package org.brakerules.harness.reference;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.Rule;
import org.brakerules.limit.Limit;

/** The rules and limits that read an inspection point of a component. */
record PointReaders(String component, RuleBaseFiles.Row point, Material material) {

  List<Rule> rules() {
    return material.readersOf(readName());
  }

  /** What rules read of the layout has no component before it. */
  private String readName() {
    String id = point.get("id");
    return point.get("property").startsWith("layout.") ? id.substring(component.length() + 1) : id;
  }

  List<Limit> limits() {
    return material.limitsOf(component).stream()
        .filter(limit -> limit.property().equals(point.get("property")))
        .toList();
  }

  boolean areAny() {
    return !rules().isEmpty() || !limits().isEmpty();
  }

  String inWords(Links links) {
    return Stream.concat(
            rules().stream().map(links::rule), Material.ids(limits()).map(links::limit))
        .collect(Collectors.joining(", "));
  }
}
