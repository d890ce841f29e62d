package org.brakerules.linter.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;

/** What of a rule base a job may name. */
final class JobNames {

  private final Set<String> ruleSets;
  private final Set<String> limits;

  JobNames(RuleBase base) {
    this.ruleSets = base.ruleSets().column("id");
    this.limits = base.limitIds();
  }

  /**
   * A name that the rule base does not have.
   *
   * @param pointer the field of the job, as a JSON Pointer
   * @param name the name
   * @param found what is wrong
   * @param remedy what to write instead
   */
  record Unknown(String pointer, String name, String found, String remedy) {}

  /** The names in a job that the rule base does not have. */
  List<Unknown> unknown(BrakeJob job) {
    List<Unknown> unknown = new ArrayList<>();
    String ruleSet = job.ruleSet().id();
    if (!ruleSets.contains(ruleSet)) {
      unknown.add(unknown("/ruleSet", ruleSet, "rule set", ruleSets, "rule-sets.csv"));
    }
    job.makersLimits().stream()
        .map(MakersLimit::limit)
        .filter(limit -> !limits.contains(limit))
        .forEach(
            limit ->
                unknown.add(unknown("/makersLimits", limit, "limit", limits, "a table of limits")));
    return unknown;
  }

  private static Unknown unknown(
      String pointer, String name, String what, Set<String> known, String table) {
    return new Unknown(
        pointer,
        name,
        "there is no " + what + " \"" + name + "\"",
        Remedy.known(name, known, "add it to " + table + " first"));
  }
}
