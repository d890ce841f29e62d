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
import org.junit.jupiter.api.Test;

/** The committed reference is the one the rule base makes. */
class ReferenceBookTest {

  private static final Path REFERENCE = Path.of("../../docs/reference");

  private final BrakeRules rules = BrakeRules.standard();
  private final SortedMap<String, String> pages = ReferenceBook.pages(rules);

  @Test
  void theCommittedPagesAreThoseOfTheRuleBase() throws IOException {
    if (Boolean.getBoolean("regenerate")) {
      write();
    }

    assertThat(committed()).isEqualTo(pages);
  }

  @Test
  void everyRuleStandsOnThePageOfItsComponentWithItsTextAndSource() {
    for (Rule rule : rules.rules()) {
      assertThat(pages.get("components/" + rule.component() + ".md"))
          .contains(
              "### " + rule.id() + " " + rule.title(), rule.text(), rule.source().get(0).id());
    }
  }

  @Test
  void everyFindingARuleReadsLeadsToTheRule() {
    for (Rule rule : rules.rules()) {
      String page = pages.get("components/" + rule.component() + ".md");
      for (String read : rule.reads()) {
        assertThat(page.lines().filter(line -> line.startsWith("| `" + read + "` |")))
            .as(read)
            .anyMatch(line -> line.contains("[" + rule.id() + "]"));
      }
    }
  }

  @Test
  void everyLimitStandsOnItsPageAndInTheTableOfAll() {
    for (Limit limit : rules.limits()) {
      assertThat(pages.get("components/" + limit.part().id() + ".md")).contains(limit.id());
      assertThat(pages.get("limits.md")).contains(limit.id(), limit.written());
    }
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

  private void write() throws IOException {
    for (Map.Entry<String, String> page : pages.entrySet()) {
      Path file = REFERENCE.resolve(page.getKey());
      Files.createDirectories(file.getParent());
      Files.writeString(file, page.getValue());
    }
  }
}
