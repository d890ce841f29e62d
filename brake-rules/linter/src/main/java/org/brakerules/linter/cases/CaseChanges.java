package org.brakerules.linter.cases;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * What a case changes on the sound axle.
 *
 * @param job fields of the job
 * @param unit fields of the vehicle unit
 * @param axle fields of the axle
 * @param layout fields of the layout, at both ends of the axle
 * @param parts fields of parts, by path below the wheel end; null takes a field away
 * @param remove paths of parts that are taken out
 * @param alone whether the wheel end across the axle is not in the job
 * @param partner fields of parts across the axle
 * @param partnerLayout fields of the layout across the axle
 */
public record CaseChanges(
    Map<String, JsonNode> job,
    Map<String, JsonNode> unit,
    Map<String, JsonNode> axle,
    Map<String, JsonNode> layout,
    Map<String, Map<String, JsonNode>> parts,
    List<String> remove,
    boolean alone,
    Map<String, Map<String, JsonNode>> partner,
    Map<String, JsonNode> partnerLayout) {

  /** What stands at {@code partner} if there is no wheel end across the axle. */
  public static final String ALONE = "none";

  /** Reads the changes of a case as it was written; what is out of form changes nothing. */
  public static CaseChanges of(JsonNode written) {
    return new CaseChanges(
        members(written.path("job")),
        members(written.path("unit")),
        members(written.path("axle")),
        members(written.path("layout")),
        parts(written.path("change")),
        texts(written.path("remove")),
        written.path("partner").asText().equals(ALONE),
        parts(written.path("partner")),
        members(written.path("partnerLayout")));
  }

  /** The sound axle that what is not named is compared with: built alike, nothing found. */
  public CaseChanges soundAxle() {
    return new CaseChanges(job, unit, axle, layout, Map.of(), List.of(), alone, Map.of(), Map.of());
  }

  /** The same without the parts whose path is not to be looked at. */
  public CaseChanges ofParts(Predicate<String> path) {
    return new CaseChanges(
        job,
        unit,
        axle,
        layout,
        only(parts, path),
        remove.stream().filter(path).toList(),
        alone,
        only(partner, path),
        partnerLayout);
  }

  private static Map<String, Map<String, JsonNode>> only(
      Map<String, Map<String, JsonNode>> parts, Predicate<String> path) {
    Map<String, Map<String, JsonNode>> kept = new LinkedHashMap<>(parts);
    kept.keySet().removeIf(path.negate());
    return kept;
  }

  private static Map<String, JsonNode> members(JsonNode written) {
    Map<String, JsonNode> members = new LinkedHashMap<>();
    written.properties().forEach(member -> members.put(member.getKey(), member.getValue()));
    return members;
  }

  private static Map<String, Map<String, JsonNode>> parts(JsonNode written) {
    Map<String, Map<String, JsonNode>> parts = new LinkedHashMap<>();
    written.properties().forEach(part -> parts.put(part.getKey(), members(part.getValue())));
    return parts;
  }

  private static List<String> texts(JsonNode written) {
    Stream<JsonNode> all =
        written.isArray()
            ? StreamSupport.stream(written.spliterator(), false)
            : Stream.of(written).filter(JsonNode::isTextual);
    return all.map(JsonNode::asText).toList();
  }
}
