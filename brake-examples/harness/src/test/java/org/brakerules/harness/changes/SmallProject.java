package org.brakerules.harness.changes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A rule base of two rules, one limit and two points, with a changelog, in a folder of its own. */
final class SmallProject {

  static final String RULES = "drum/drum.drl";
  static final String LIMITS = "drum/drum.limits.csv";
  static final String POINTS = "drum/drum.points.csv";
  static final String SOURCES = "sources.csv";
  static final String RULE_SET = "rule-sets/us-federal/rule-set.csv";

  private static final String RULES_OF_DRUM =
      """
      package org.brakerules.rules;

      rule "DRUM-010 Bore over the discard diameter"
        @source("COMMON-PRACTICE")
        @because("The inside diameter is {measured}, limit {limit}.")
        @action("Replace the drum.")
      when
        BeyondLimit( limit == "drum.diameter.max", $wheelEnd : wheelEnd )
        $part : Drum( wheelEnd == $wheelEnd )
      then
        verdict.replace( $part );
      end

      rule "DRUM-020 Drum soaked"
        @source("COMMON-PRACTICE")
        @because("The {part} is soaked.")
        @action("Clean it.")
      when
        $part : Drum( soaked == Sign.SEEN )
      then
        verdict.clean( $part );
      end
      """;

  private static final String LIMITS_OF_DRUM =
      """
      id,part,property,comparison,value,station,methods,moment,applies-to,rule-set,from,to,source,note
      drum.diameter.max,drum,diameter,at most,16.620 in,,drum-gauge,,layout.drumDiameter=16.5 in,,,,COMMON-PRACTICE,a note
      drum.diameter.max,drum,diameter,at most,15.120 in,,drum-gauge,,layout.drumDiameter=15 in,,,,COMMON-PRACTICE,
      """;

  private static final String POINTS_OF_DRUM =
      """
      id,part,property,at,needed-from,applies-to,needed,brake,finds,instrument,how
      drum.diameter,drum,diameter,,drum-off,part.condition=as-found,always,at-rest,fact,drum gauge,Measure across the bore.
      drum.soaked,drum,soaked,,drum-off,,always,at-rest,fault,eye,Look over the bore.
      """;

  private final Path resources;
  private final Path docs;

  /** A project whose rule base is released as 0.1.0. */
  SmallProject(Path folder) throws IOException {
    resources = folder.resolve("resources");
    docs = folder.resolve("docs");
    write(RULES, RULES_OF_DRUM);
    write(LIMITS, LIMITS_OF_DRUM);
    write(POINTS, POINTS_OF_DRUM);
    write(SOURCES, "id,title,standing,rule-set,note\nCOMMON-PRACTICE,Practice,common-practice,,\n");
    write("rule-sets.csv", "id\nus-federal\n");
    write(
        RULE_SET,
        """
        title,test-pressure-least,test-pressure-most,test-pressure-source,automatic-adjusters-from,automatic-adjusters-source
        Federal,80 psi,90 psi,COMMON-PRACTICE,1994-10-20,COMMON-PRACTICE
        """);
    write("cautions.csv", "id,from,text,source\n");
    Files.createDirectories(docs);
    changelog("## 0.1.0 (2026-11-25)\n\nFirst release.\n");
    record("0.1.0");
  }

  Path resources() {
    return resources;
  }

  Path docs() {
    return docs;
  }

  /** The changelog below its title. */
  void changelog(String text) throws IOException {
    Files.writeString(docs.resolve("CHANGELOG.md"), "# Changelog\n\n" + text);
  }

  /** The changelog with entries on verdicts that are not released yet, the first on line 7. */
  void unreleased(String entries) throws IOException {
    changelog(
        """
        ## Unreleased

        **Verdicts**

        %s

        ## 0.1.0 (2026-11-25)
        """
            .formatted(entries));
  }

  /** Puts the rule base on record, and what is wrong with that comes back. */
  List<String> record(String version) throws IOException {
    Recording recording = Recording.of(version, resources, docs);
    if (recording.problems().isEmpty()) {
      recording.write();
    }
    return recording.problems().stream().map(this::withoutFolder).toList();
  }

  void replace(String file, String old, String young) throws IOException {
    String text = Files.readString(path(file));
    assertThat(text).contains(old);
    write(file, text.replace(old, young));
  }

  List<String> problems() throws IOException {
    return changes().problems().stream().map(this::withoutFolder).toList();
  }

  List<String> report() throws IOException {
    return changes().report().toList();
  }

  private Changes changes() throws IOException {
    return Changes.of(resources, docs);
  }

  String withoutFolder(String problem) {
    return problem.replace(docs.toString().replace('\\', '/'), "docs");
  }

  private void write(String file, String text) throws IOException {
    Files.createDirectories(path(file).getParent());
    Files.writeString(path(file), text);
  }

  private Path path(String file) {
    return resources.resolve("org/brakerules/rules").resolve(file);
  }
}
