package org.brakerules.harness.cases;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;

/**
 * One case beside the rules of a component: what it changes on the sound wheel end, and what it
 * expects.
 *
 * @param component the component, such as {@code camshaft-bushing}
 * @param name what the case says
 * @param changes what it changes
 * @param expected what it expects
 * @param source where an outside check comes from; may be empty
 */
public record RuleCase(
    String component, String name, Changes changes, Expected expected, String source) {

  /**
   * What a case changes.
   *
   * @param job fields of the job
   * @param unit fields of the vehicle unit
   * @param axle fields of the axle
   * @param layout fields of the layout
   * @param parts fields of parts, by path below the wheel end; null takes a field away
   * @param remove paths of parts that are taken out
   * @param partner fields of parts across the axle, whose wheel end is otherwise sound; if neither
   *     this nor the next is there, nor is that wheel end
   * @param partnerLayout fields of the layout across the axle
   */
  record Changes(
      Map<String, JsonNode> job,
      Map<String, JsonNode> unit,
      Map<String, JsonNode> axle,
      Map<String, JsonNode> layout,
      Map<String, Map<String, JsonNode>> parts,
      List<String> remove,
      Map<String, Map<String, JsonNode>> partner,
      Map<String, JsonNode> partnerLayout) {

    boolean hasPartner() {
      return !partner.isEmpty() || !partnerLayout.isEmpty();
    }
  }

  /**
   * What a case expects. Parts are named by their path below the wheel end; those across the axle
   * have their side before it.
   *
   * @param fires rules that speak
   * @param near rules that just do not speak
   * @param fails text that the explanation of the silent rule contains; may be empty
   * @param dispositions the disposition of parts
   * @param holds parts on hold
   * @param needs points that are needed
   * @param road the road answer of parts
   */
  public record Expected(
      List<String> fires,
      List<String> near,
      String fails,
      Map<String, String> dispositions,
      List<String> holds,
      List<String> needs,
      Map<String, String> road) {}
}
