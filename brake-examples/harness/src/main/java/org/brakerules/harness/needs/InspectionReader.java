package org.brakerules.harness.needs;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.harness.RuleSetName;
import org.brakerules.harness.UsageMistake;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.json.InvalidJobException;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.json.Problem;

/**
 * Reads an inspection from the options of a command. The options are read as the fields of a job
 * are, so that both have the same names, values and messages.
 */
public final class InspectionReader {

  private static final String LAYOUT = "/units/0/axles/0/wheelEnds/0/layout";
  private static final Map<String, String> OPTIONS =
      Map.of("/date", "--date", "/ruleSet", "--rule-set", "/scope", "--scope");

  private final Map<String, String> ruleSets;

  /** Knows the rule sets of a rule base, by id. */
  public InspectionReader(Map<String, String> ruleSets) {
    this.ruleSets = ruleSets;
  }

  /**
   * Reads an inspection.
   *
   * @param layout properties of the layout by name; a dot leads into a property of a property, such
   *     as {@code chamber.type}
   * @param ruleSet the id of a rule set; empty for all
   * @throws UsageMistake if an option has a value it cannot have
   */
  public Inspection read(Map<String, String> layout, String scope, String date, String ruleSet) {
    Optional<RuleSet> asked =
        ruleSet.isEmpty()
            ? Optional.empty()
            : Optional.of(RuleSetName.read("--rule-set", ruleSet, ruleSets.keySet()));
    BrakeJob job = job(layout, scope, date);
    return new Inspection(
        job.wheelEnds().findFirst().orElseThrow().layout(), job.scope(), job.date(), asked);
  }

  private static BrakeJob job(Map<String, String> layout, String scope, String date) {
    ObjectNode job = JsonNodeFactory.instance.objectNode();
    job.put("date", date).put("ruleSet", "any").put("scope", scope);
    ObjectNode wheelEnd =
        job.putArray("units")
            .addObject()
            .putArray("axles")
            .addObject()
            .put("axle", 1)
            .putArray("wheelEnds")
            .addObject();
    wheelEnd.put("side", "left");
    ObjectNode built = wheelEnd.putObject("layout");
    layout.forEach((name, value) -> put(built, name, value));
    try {
      return JobReader.read(job.toString());
    } catch (InvalidJobException invalid) {
      throw new UsageMistake(inWords(invalid.problems()));
    }
  }

  private static void put(ObjectNode owner, String name, String value) {
    int dot = name.indexOf('.');
    if (dot < 0) {
      owner.put(name, value);
    } else {
      put(owner.withObjectProperty(name.substring(0, dot)), name.substring(dot + 1), value);
    }
  }

  private static String inWords(List<Problem> problems) {
    return String.join(
        "; ",
        problems.stream()
            .map(
                one ->
                    "%s: found %s, expected %s".formatted(option(one), one.found(), one.expected()))
            .toList());
  }

  private static String option(Problem problem) {
    String pointer = problem.pointer();
    return pointer.startsWith(LAYOUT + "/")
        ? "--layout " + pointer.substring(LAYOUT.length() + 1).replace('/', '.')
        : OPTIONS.getOrDefault(pointer, pointer);
  }
}
