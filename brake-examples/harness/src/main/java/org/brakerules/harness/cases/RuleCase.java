package org.brakerules.harness.cases;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import org.brakerules.linter.cases.CaseChanges;
import org.brakerules.linter.cases.CaseJob;

/**
 * One case beside the rules of a component: what it changes on the sound wheel end, and what it
 * expects.
 *
 * @param component the component, such as {@code camshaft-bushing}
 * @param name what the case says
 * @param soundWheelEnd the job with the sound wheel end that it changes
 * @param changes what it changes
 * @param expected what it expects
 * @param source where an outside check comes from; may be empty
 */
public record RuleCase(
    String component,
    String name,
    JsonNode soundWheelEnd,
    CaseChanges changes,
    Expected expected,
    String source) {

  /** Its job. */
  CaseJob job() {
    return CaseJob.of(soundWheelEnd, changes);
  }

  /** The job of the sound axle that what it does not name is compared with. */
  CaseJob soundAxle() {
    return CaseJob.of(soundWheelEnd, changes.soundAxle());
  }

  /**
   * What a case expects. Parts are named by their path below the wheel end; those across the axle
   * have their side before it. A part that is not named comes out as on the sound axle.
   *
   * @param fires rules that speak
   * @param near rules that just do not speak
   * @param fails text that the explanation of the silent rule contains; may be empty
   * @param speaks for rules, the parts they speak of and no others
   * @param dispositions the disposition of parts
   * @param holds the parts on hold
   * @param needs the points that are needed beyond those of the sound axle
   * @param road the road answer of parts
   */
  public record Expected(
      List<String> fires,
      List<String> near,
      String fails,
      Map<String, List<String>> speaks,
      Map<String, String> dispositions,
      List<String> holds,
      List<String> needs,
      Map<String, String> road) {}
}
