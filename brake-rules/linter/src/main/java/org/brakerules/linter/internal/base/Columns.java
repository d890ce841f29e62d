package org.brakerules.linter.internal.base;

import java.util.List;

/** The columns of each table. */
final class Columns {

  static final List<String> LIMITS =
      List.of(
          "id",
          "part",
          "property",
          "comparison",
          "value",
          "station",
          "methods",
          "moment",
          "applies-to",
          "rule-set",
          "from",
          "to",
          "source",
          "note");

  static final List<String> POINTS =
      List.of(
          "id",
          "part",
          "property",
          "at",
          "needed-from",
          "applies-to",
          "needed",
          "brake",
          "finds",
          "instrument",
          "how");

  static final List<String> SOURCES = List.of("id", "title", "standing", "rule-set", "note");

  static final List<String> RULE_SETS = List.of("id");

  static final List<String> LIMITS_OF_RULE_SET =
      LIMITS.stream().filter(column -> !column.equals("rule-set")).toList();

  static final List<String> COMPARISONS = List.of("limit", "comparison", "source", "note");

  static final List<String> RULES_OFF = List.of("rule", "source", "reason");

  static final List<String> RULE_SET =
      List.of(
          "title",
          "test-pressure-least",
          "test-pressure-most",
          "test-pressure-source",
          "automatic-adjusters-from",
          "automatic-adjusters-source");

  static final List<String> UNREAD = List.of("id", "reason");

  static final List<String> CAUTIONS = List.of("id", "from", "text", "source");

  static final List<String> EQUIVALENT_CHANGES = List.of("of", "change", "reason");

  static final List<String> COVERAGE_OPEN = List.of("what", "id", "reason");

  static final List<String> CONFLICTS =
      List.of(
          "id",
          "what",
          "source-a",
          "says-a",
          "source-b",
          "says-b",
          "default-takes",
          "why",
          "concerns");

  static final List<String> DECISION_TABLES = List.of("table", "part", "sign", "rules");

  private Columns() {}
}
