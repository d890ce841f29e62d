package org.brakerules.harness.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Source;
import org.junit.jupiter.api.Test;

/** The committed reference is the one the rule base makes. */
class ReferenceBookTest {

  private static final Path REFERENCE = Path.of("../../docs/reference");

  private static final BrakeRules RULES = BrakeRules.standard();
  private static final SortedMap<String, String> PAGES = ReferenceBook.standard().pages();

  @Test
  void theCommittedPagesAreThoseOfTheRuleBase() throws IOException {
    if (Boolean.getBoolean("regenerate")) {
      write();
    }

    assertThat(committed()).isEqualTo(PAGES);
  }

  @Test
  void everyRuleStandsOnThePageOfItsComponentWithItsTextAndSource() {
    for (Rule rule : RULES.rules()) {
      assertThat(PAGES.get("components/" + rule.component() + ".md"))
          .contains(
              "### " + rule.id() + " " + rule.title(), rule.text(), rule.source().get(0).id());
    }
  }

  @Test
  void everyFindingARuleReadsLeadsToTheRule() {
    for (Rule rule : RULES.rules()) {
      String page = PAGES.get("components/" + rule.component() + ".md");
      for (String read : rule.reads()) {
        assertThat(page.lines().filter(line -> line.startsWith("| `" + read + "` |")))
            .as(read)
            .anyMatch(line -> line.contains("[" + rule.id() + "]"));
      }
    }
  }

  @Test
  void everyLimitStandsOnItsPageAndInTheTableOfAll() {
    for (Limit limit : RULES.limits()) {
      assertThat(PAGES.get("components/" + limit.part().id() + ".md")).contains(limit.id());
      assertThat(PAGES.get("limits.md")).contains(limit.id(), limit.written());
    }
  }

  @Test
  void everyClauseThatIsCitedHasItsPlace() {
    Stream<String> cited =
        Stream.concat(
                RULES.rules().stream().flatMap(rule -> rule.source().stream()),
                RULES.limits().stream().map(Limit::source))
            .map(Source::citation);
    assertThat(cited)
        .allMatch(
            one -> PAGES.get("traceability.md").contains("\n### " + Citation.heading(one) + "\n"));
  }

  @Test
  void aLimitShowsAllThatItsRowSays() {
    assertThat(PAGES.get("limits.md"))
        .contains(
            "| at most 2 1/4 in | the part's own | full application | any |"
                + " `layout.chamber.family=clamp; layout.chamber.type=36;"
                + " layout.chamber.strokeClass=standard` | any | to 2021-10-13 |"
                + " [US-49-CFR-393.47#(e)(1)](traceability.md#us-49-cfr-39347e1) (law) |"
                + " outside diameter 9 in; text of 77 FR 46638, which 86 FR 57076 changed |",
            "| at most 0.005 in | the part's own | dial indicator | after work |",
            "Read by [SLACK-ADJUSTER-130](components/slack-adjuster.md");
  }

  @Test
  void everyComponentPageTellsItsHistory() {
    assertThat(RULES.components())
        .allSatisfy(
            component ->
                assertThat(PAGES.get("components/" + component + ".md"))
                    .contains("\n## History\n\n- "));
  }

  private static Map<String, String> committed() throws IOException {
    Map<String, String> committed = new TreeMap<>();
    try (Stream<Path> files = Files.walk(REFERENCE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        committed.put(
            REFERENCE.relativize(file).toString().replace('\\', '/'), Files.readString(file));
      }
    }
    return committed;
  }

  private static void write() throws IOException {
    for (Map.Entry<String, String> page : PAGES.entrySet()) {
      Path file = REFERENCE.resolve(page.getKey());
      Files.createDirectories(file.getParent());
      Files.writeString(file, page.getValue());
    }
  }
}
