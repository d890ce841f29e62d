package org.brakerules.linter.cases;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * The path of a part below its wheel end, such as {@code camshaft-seal/head-end/2}.
 *
 * @param kind the kind of part
 * @param station the station; empty if the wheel end has the part once
 * @param number tells parts of one kind and station apart, from 1
 */
record PartPath(String kind, String station, int number) {

  /**
   * Reads a path.
   *
   * @param path the path as written
   * @param pointer where in the case it stands
   * @throws InvalidCaseException if it is none
   */
  static PartPath parse(String path, String pointer) {
    String[] steps = path.split("/", -1);
    int last = steps.length - 1;
    boolean isNumbered = last > 0 && steps[last].matches("[1-9][0-9]?");
    int number = isNumbered ? Integer.parseInt(steps[last]) : 1;
    int names = isNumbered ? last : last + 1;
    if (names > 2) {
      throw new InvalidCaseException(
          pointer,
          "\"" + path + "\" is no part below a wheel end",
          "write a path such as \"camshaft-bushing/head-end\"");
    }
    return new PartPath(steps[0], names == 2 ? steps[1] : "", number);
  }

  static PartPath of(JsonNode part) {
    return new PartPath(
        part.path("part").asText(), part.path("station").asText(), part.path("number").asInt(1));
  }
}
