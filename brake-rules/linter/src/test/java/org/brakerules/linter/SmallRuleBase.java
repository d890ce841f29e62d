package org.brakerules.linter;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A sound rule base of two components, into which a test writes one mistake. */
final class SmallRuleBase {

  static final String HEADER =
      """
      package org.brakerules.rules;

      import org.brakerules.internal.fact.*;
      import org.brakerules.model.layout.*;
      import org.brakerules.model.part.*;
      import org.brakerules.model.reading.*;

      global org.brakerules.internal.fact.Verdicts verdict;

      """;

  static final String SIGN_RULE =
      """
      rule "CAMSHAFT-010 Cracked camshaft"
        @source("COMMON-PRACTICE")
        @because("The {part} is cracked.")
        @action("Replace the camshaft.")
      when
        $part : Camshaft( crack == Sign.SEEN )
      then
        verdict.replace( $part );
      end
      """;

  static final String LIMIT_RULE =
      """
      rule "CAMSHAFT-020 End play over the limit"
        @source("COMMON-PRACTICE")
        @because("End play is {measured}, limit {limit}.")
        @action("Add shims.")
      when
        BeyondLimit( limit == "camshaft.end-play.max", $wheelEnd : wheelEnd )
        $part : Camshaft( wheelEnd == $wheelEnd )
      then
        verdict.adjust( $part );
      end
      """;

  static final String SOURCES =
      """
      id,title,standing,rule-set,note
      COMMON-PRACTICE,Common practice of the trade,common-practice,,
      US-ARMY-TM-5-4210-220-12,TM 5-4210-220-12,government,,
      """;

  static final String RULE_SETS =
      """
      id
      us-federal
      quebec
      """;

  private static final String RULE_SET =
      "title,test-pressure-least,test-pressure-most,test-pressure-source,"
          + "automatic-adjusters-from,automatic-adjusters-source\n";

  static final String QUEBEC =
      RULE_SET + "Quebec,90 psi,100 psi,COMMON-PRACTICE,1996-05-31,COMMON-PRACTICE\n";

  private static final String US_FEDERAL =
      RULE_SET + "Federal,80 psi,90 psi,COMMON-PRACTICE,1994-10-20,COMMON-PRACTICE\n";

  static final String LIMITS =
      """
      id,part,property,comparison,value,station,methods,moment,applies-to,rule-set,from,to,source,note
      camshaft.end-play.max,camshaft,endPlay,at most,0.030 in,spline-end,dial-indicator,,,,,,COMMON-PRACTICE,
      """;

  static final String POINTS =
      """
      id,part,property,at,needed-from,applies-to,needed,brake,finds,instrument,how
      camshaft.end-play,camshaft,endPlay,spline-end,shoes-off,,always,at-rest,fact,dial indicator,Push and pull.
      camshaft.crack,camshaft,crack,,shoes-off,,always,at-rest,fault,eye,Look along the shaft.
      camshaft.turns-freely,camshaft,turnsFreely,,camshaft-out,,always,at-rest,good,hand,Turn it both ways.
      """;

  static final String DRUM_POINTS =
      """
      id,part,property,at,needed-from,applies-to,needed,brake,finds,instrument,how
      drum.soaked,drum,soaked,,drum-off,,on-demand,at-rest,fault,eye,Look over the bore.
      """;

  private final Path resources;

  SmallRuleBase(Path resources) throws IOException {
    this.resources = resources;
    write("sources.csv", SOURCES);
    write("rule-sets.csv", RULE_SETS);
    write("rule-sets/us-federal/rule-set.csv", US_FEDERAL);
    write("rule-sets/quebec/rule-set.csv", QUEBEC);
    write("cautions.csv", "id,from,text,source\n");
    write("camshaft/camshaft.limits.csv", LIMITS);
    write("camshaft/camshaft.points.csv", POINTS);
    write("drum/drum.points.csv", DRUM_POINTS);
    RestOfTheBrake.writeTo(this);
  }

  /** Writes one file of the rule base. */
  void write(String file, String text) throws IOException {
    Path path = resources.resolve("org/brakerules/rules").resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }

  /** Writes the sound wheel end of the rule base that ships, without its maker's limits. */
  void writeSoundWheelEnd() throws IOException {
    writeSoundWheelEnd("", "");
  }

  /** The same with one piece written otherwise. */
  void writeSoundWheelEnd(String written, String instead) throws IOException {
    String shipped = "../src/main/resources/org/brakerules/rules/sound-wheel-end.json";
    String job = Files.readString(Path.of(shipped));
    write(
        "sound-wheel-end.json",
        job.replaceFirst("(?s)\"makersLimits\": \\[.*?\\],", "")
            .replace(written.isEmpty() ? job : written, instead));
  }

  /** The problems of a rule with one piece written otherwise; a written \n breaks the line. */
  List<String> with(String rule, String written, String instead) throws IOException {
    String piece = unescaped(written);
    if (!rule.contains(piece)) {
      throw new IllegalArgumentException("The rule does not hold " + piece);
    }
    return problemsOf(rule.replace(piece, unescaped(instead)));
  }

  /** The problems of rules that stand after the header. */
  List<String> problemsOf(String rules) throws IOException {
    return problemsOfFile(HEADER + rules);
  }

  /** The problems of a rule file. */
  List<String> problemsOfFile(String text) throws IOException {
    write("camshaft/camshaft.drl", text);
    return problems();
  }

  /** All problems as {@code line:column [kind] message -> remedy}. */
  List<String> problems() {
    return RuleLinter.lint(resources).stream()
        .map(
            problem ->
                "%d:%d [%s] %s -> %s"
                    .formatted(
                        problem.line(),
                        problem.column(),
                        problem.kind().id(),
                        problem.message(),
                        problem.remedy()))
        .toList();
  }

  private static String unescaped(String piece) {
    return piece.equals("(nothing)") ? "" : piece.replace("\\n", "\n");
  }
}
