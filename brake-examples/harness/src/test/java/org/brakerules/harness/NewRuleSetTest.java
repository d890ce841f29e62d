package org.brakerules.harness;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rule set that is only a folder of data beside the others. */
class NewRuleSetTest {

  private static final String CASES =
      """

      - case: In Invented a stroke at the figure is rejected
        fires: [CHAMBER-010]
        job: { ruleSet: invented }
        layout: { adjuster: manual }
        change:
          chamber: { appliedStroke: { value: 2 in, method: full-application, reservoirPressure: 96 psi } }
        then:
          chamber: adjust
        road: { chamber: failed }

      - case: In Invented a stroke read at another pressure is no reading
        job: { ruleSet: invented }
        layout: { adjuster: manual }
        change:
          chamber: { appliedStroke: { value: 1.9 in, method: full-application, reservoirPressure: 94 psi } }
        then:
          chamber: undecided
        needs: [chamber.applied-stroke]
        road: { chamber: open }

      - case: In Invented a free stroke beyond a limit that no rule reads fails and waits
        job: { ruleSet: invented }
        layout: { adjuster: manual }
        change:
          chamber:
            appliedStroke: { value: 1.9 in, method: full-application, reservoirPressure: 96 psi }
            freeStroke: { value: 0.7 in, method: pried-by-hand, moment: as-found }
        then:
          chamber: undecided
        road: { chamber: failed }

      - case: In Invented wrong bracket holes wait for somebody who decides
        near: CHAMBER-250
        fails: the rule set "invented" does not have it
        job: { ruleSet: invented }
        change:
          chamber:
            appliedStroke: { value: 1.9 in, method: full-application, reservoirPressure: 96 psi }
            wrongBracketHoles: seen
        then:
          chamber: undecided
      """;

  @TempDir Path folder;
  private Path rules;

  @BeforeEach
  void aFolderOfDataAlone() throws IOException {
    rules = RulesCopy.in(folder).resolve("org/brakerules/rules");
    append("rule-sets.csv", "invented\n");
    append("sources.csv", "INVENTED-CODE,Invented code,law,invented,\n");
    write(
        "rule-set.csv",
        """
        title,test-pressure-least,test-pressure-most,test-pressure-source,automatic-adjusters-from,automatic-adjusters-source
        Invented,95 psi,97 psi,INVENTED-CODE#1,,
        """);
    write(
        "limits.csv",
        """
        id,part,property,comparison,value,station,methods,moment,applies-to,from,to,source,note
        chamber.free-stroke.invented.max,chamber,freeStroke,less than,0.6 in,,pried-by-hand,,,,,INVENTED-CODE#2,
        """);
    write(
        "comparisons.csv",
        """
        limit,comparison,source,note
        chamber.applied-stroke.max,less than,INVENTED-CODE#3,
        """);
  }

  @Test
  void is_known_to_the_linter_and_to_the_cases() throws IOException {
    append("chamber/chamber.cases.yaml", CASES);
    offRule();
    assertThat(CommandLineRun.of("lint", folder.toString()).out()).contains("0 problems");
    CommandLineRun run = CommandLineRun.of("cases", "--rules", folder.toString(), "chamber");
    assertThat(run.out())
        .contains("ok     chamber: In Invented a stroke at the figure is rejected")
        .contains("ok     chamber: In Invented a stroke read at another pressure is no reading")
        .contains("ok     chamber: In Invented wrong bracket holes wait for somebody who decides")
        .contains(
            "ok     chamber: In Invented a free stroke beyond a limit that no rule reads fails and waits")
        .contains(", 0 not as expected");
    assertThat(run.exitCode()).isZero();
  }

  @Test
  void a_name_without_its_folder_is_told_and_nothing_is_tried() throws IOException {
    append("rule-sets.csv", "elsewhere\n");
    CommandLineRun run = CommandLineRun.of("cases", "--rules", folder.toString(), "chamber");
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err()).contains("rule-sets/elsewhere/rule-set.csv:1:1: [table-form]");
  }

  private void offRule() throws IOException {
    write(
        "rules-off.csv",
        "rule,source,reason\nCHAMBER-250,INVENTED-CODE#4,its text leaves them to the maker\n");
  }

  private void write(String file, String text) throws IOException {
    Path path = rules.resolve("rule-sets/invented").resolve(file);
    Files.createDirectories(requireNonNull(path.getParent()));
    Files.writeString(path, text);
  }

  private void append(String file, String text) throws IOException {
    Files.writeString(rules.resolve(file), text, StandardOpenOption.APPEND);
  }
}
