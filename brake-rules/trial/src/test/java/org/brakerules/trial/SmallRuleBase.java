package org.brakerules.trial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.JobReader;

/** A small invented rule base about camshafts, in a folder of its own. */
final class SmallRuleBase {

  private static final String RULES =
      """
      package org.brakerules.rules;

      import org.brakerules.internal.fact.*;
      import org.brakerules.model.layout.*;
      import org.brakerules.model.part.*;
      import org.brakerules.model.reading.*;

      global org.brakerules.internal.fact.Verdicts verdict;

      rule "CAMSHAFT-010 Cracked or bent camshaft"
        @source("MANUAL#4-30; COMMON-PRACTICE")
        @because("The {part} is cracked or bent.")
        @action("Replace the camshaft.")
      when
        $part : Camshaft( condition == Condition.AS_FOUND, crack == Sign.SEEN || bent == Sign.SEEN )
      then
        verdict.replace( $part );
      end

      rule "CAMSHAFT-020 End play over the limit"
        @source("MANUAL#4-31")
        @because("End play is {measured}, limit {limit}.")
        @action("Add shims.")
      when
        BeyondLimit( limit == "camshaft.end-play.max", $wheelEnd : wheelEnd )
        $part : Camshaft( wheelEnd == $wheelEnd )
      then
        verdict.adjust( $part );
      end

      rule "CAMSHAFT-030 Rust with the drum away"
        @source("COMMON-PRACTICE")
        @because("The {part} is rusty.")
        @action("Look at the drum.")
      when
        $part : Camshaft( rust == Sign.SEEN, $wheelEnd : wheelEnd )
        not Drum( wheelEnd == $wheelEnd )
      then
        verdict.lookAt( $part, "camshaft.flat" );
      end
      """;

  private static final String SOURCES =
      """
      id,title,standing,rule-set,note
      COMMON-PRACTICE,Common practice of the trade,common-practice,,
      MANUAL,A manual,government,,
      LAW,A law,law,here,
      UNUSED,A book nobody opened,press,,
      """;

  private static final String HERE =
      """
      title,test-pressure-least,test-pressure-most,test-pressure-source,automatic-adjusters-from,automatic-adjusters-source
      Here,80 psi,90 psi,LAW#1,,
      """;

  private static final String LIMITS =
      """
      id,part,property,comparison,value,station,methods,moment,applies-to,rule-set,from,to,source,note
      camshaft.end-play.max,camshaft,endPlay,at most,0.030 in,,,,axle.kind=drive,,,,MANUAL#4-31,
      camshaft.end-play.max,camshaft,endPlay,at most,0.040 in,,,,axle.kind=steer,,,,COMMON-PRACTICE,
      camshaft.backlash.max,camshaft,splineBacklash,at most,,,,,,,,,COMMON-PRACTICE,
      """;

  private static final String POINTS =
      """
      id,part,property,at,needed-from,applies-to,needed,brake,finds,instrument,how
      camshaft.crack,camshaft,crack,,camshaft-out,,always,at-rest,fault,eye,Look.
      camshaft.end-play,camshaft,endPlay,,shoes-off,,with-limit,at-rest,fact,gauge,Pull.
      camshaft.flat,camshaft,flat,,shoes-off,,on-demand,at-rest,fault,eye,Look.
      camshaft.dents,camshaft,dents,,shoes-off,,always,at-rest,fault,eye,Look.
      """;

  private final Path resources;

  SmallRuleBase(Path resources) throws IOException {
    this.resources = resources;
    write("camshaft/camshaft.drl", RULES);
    write("camshaft/camshaft.limits.csv", LIMITS);
    write("camshaft/camshaft.points.csv", POINTS);
    write("sources.csv", SOURCES);
    write("rule-sets.csv", "id\nhere\n");
    write("rule-sets/here/rule-set.csv", HERE);
    write("cautions.csv", "id,from,text,source\nchock,wheel-on,Chock the wheels.,LAW#2\n");
  }

  /** Writes one file of the rule base. */
  void write(String file, String text) throws IOException {
    Path path = resources.resolve("org/brakerules/rules").resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }

  /** A case of one drive wheel end with a camshaft of these fields. */
  static Named camshaft(String name, String fields) {
    return oneEnd(name, "{ \"part\": \"camshaft\"" + fields + " }");
  }

  /** A case of one drive wheel end with these parts. */
  static Named oneEnd(String name, String parts) {
    return new Named("camshaft", name, job(end("left", parts)), Set.of());
  }

  /** A case of both ends of a drive axle. */
  static Named bothEnds(String name, String left, String right) {
    return new Named(
        "camshaft", name, job(end("left", left) + "," + end("right", right)), Set.of());
  }

  private static String end(String side, String parts) {
    return """
    { "side": "%s", "layout": { "camshaft": "tube" }, "parts": [ %s ] }"""
        .formatted(side, parts);
  }

  private static BrakeJob job(String wheelEnds) {
    return JobReader.read(
        """
        { "date": "2026-11-20", "ruleSet": "here", "scope": "camshaft-out",
          "units": [ { "axles": [ { "axle": 2, "kind": "drive", "wheelEnds": [ %s ] } ] } ] }"""
            .formatted(wheelEnds));
  }

  /**
   * A case that takes any answer.
   *
   * @param component the component it lies beside
   * @param name what it says
   * @param job its job
   * @param rules the rules it names
   */
  record Named(String component, String name, BrakeJob job, Set<String> rules)
      implements TrialCase {

    /** The same case, naming a rule. */
    Named naming(String rule) {
      return new Named(component, name, job, Set.of(rule));
    }

    /** The same case beside another component. */
    Named beside(String other) {
      return new Named(other, name, job, rules);
    }

    @Override
    public boolean isAsExpected(TrialRules answering) {
      return true;
    }
  }
}
