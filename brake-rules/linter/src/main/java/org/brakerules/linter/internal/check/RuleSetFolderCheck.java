package org.brakerules.linter.internal.check;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleSetFolder;
import org.brakerules.linter.internal.base.Table;
import org.brakerules.linter.internal.text.Spot;

/** A rule set is a name in the index and a folder with one row; nothing else in it is read. */
final class RuleSetFolderCheck implements Check {

  private static final List<String> FILES =
      List.of("rule-set.csv", "limits.csv", "comparisons.csv", "rules-off.csv");

  @Override
  public void check(RuleBase base, Findings findings) {
    Set<String> seen = new HashSet<>();
    for (Row row : base.ruleSets().rows()) {
      if (!seen.add(row.text("id"))) {
        findings.add(
            LintKind.TABLE_ID,
            row.cell("id").spot(),
            "the rule set \"" + row.text("id") + "\" is there twice",
            "take one out");
      }
    }
    base.ruleSetFolders().forEach(folder -> check(folder, seen, findings));
  }

  private static void check(RuleSetFolder folder, Collection<String> named, Findings findings) {
    Table itself = folder.itself();
    Spot start = new Spot(itself.file(), 1, 1);
    if (!named.contains(folder.id())) {
      findings.add(
          LintKind.UNKNOWN_ID,
          start,
          "rule-sets.csv does not name \"" + folder.id() + "\", so no job can",
          "add the line " + folder.id() + " to rule-sets.csv");
    }
    if (itself.mistakes().isEmpty() && itself.rows().size() != 1) {
      findings.add(
          LintKind.TABLE_FORM,
          start,
          "a rule set has one row, and here are " + itself.rows().size(),
          "give each rule set a folder of its own");
    }
    folder.otherFiles().forEach(file -> stray(folder, file, findings));
  }

  private static void stray(RuleSetFolder folder, String file, Findings findings) {
    String own = folder.itself().file().replace("rule-set.csv", file);
    findings.add(
        LintKind.STRAY_FILE,
        new Spot(own, 1, 1),
        "nobody reads \"" + file + "\" of a rule set",
        Remedy.known(file, FILES, "take it out; a rule set has " + String.join(", ", FILES)));
  }
}
