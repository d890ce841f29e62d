package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleBaseReader;
import org.brakerules.linter.internal.text.Spot;
import org.brakerules.model.text.NearestName;

/** The rule compiler reads every rule file it finds; only those of the folders are checked. */
final class StrayFileCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    for (String file : base.strayFiles()) {
      boolean isCompiled = RuleBaseReader.isCompiled(file);
      findings.add(
          LintKind.STRAY_FILE,
          new Spot(file, 1, 1),
          isCompiled
              ? "rules may not stand here, yet they would be compiled"
              : "nobody reads a file of this name here",
          isCompiled
              ? "move them to org/brakerules/rules/<component>/<component>.drl"
              : "name it after its folder, such as " + named(file) + ", or take it out");
    }
  }

  /** The file as it would be read: the name of its folder, and the ending it comes nearest to. */
  private static String named(String file) {
    int end = file.lastIndexOf('/');
    String folder = file.substring(file.lastIndexOf('/', end - 1) + 1, end);
    List<String> known =
        Stream.of("limits.csv", "points.csv", "equivalent-changes.csv", "cases.yaml", "md")
            .map(ending -> folder + "." + ending)
            .toList();
    return NearestName.of(file.substring(end + 1), known).orElse(folder + ".cases.yaml");
  }
}
