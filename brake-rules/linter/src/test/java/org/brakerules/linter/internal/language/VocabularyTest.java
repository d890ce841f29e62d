package org.brakerules.linter.internal.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The linter runs before the facts are compiled and keeps their properties itself; here its table
 * is compared with their source.
 */
class VocabularyTest {

  private static final Path FACTS = Path.of("../src/main/java/org/brakerules/internal/fact");
  private static final Pattern COMPONENTS = Pattern.compile("public record \\w+\\(([^)]*)\\)");
  private static final Pattern COMPONENT = Pattern.compile("(\\w+) (\\w+)");
  private static final Pattern ACCESSOR = Pattern.compile("public (\\w+) (\\w+)\\(\\) \\{");
  private static final Pattern VERDICT =
      Pattern.compile("public void (\\w+)\\(Part part(, String point)?\\)");

  static Iterable<FactType> otherThanParts() {
    return Vocabulary.otherThanParts();
  }

  @ParameterizedTest
  @MethodSource("otherThanParts")
  void a_fact_has_every_property_the_linter_knows(FactType fact) throws IOException {
    Map<String, String> known = new TreeMap<>();
    fact.properties().forEach((name, type) -> known.put(name, type.getSimpleName()));
    assertThat(propertiesInSource(fact.name())).containsAllEntriesOf(known);
  }

  @Test
  void every_verdict_the_linter_knows_is_there_and_no_other() throws IOException {
    Map<String, Boolean> takesPoint = new TreeMap<>();
    Matcher verdict = VERDICT.matcher(Files.readString(FACTS.resolve("Verdicts.java")));
    while (verdict.find()) {
      takesPoint.put(verdict.group(1), verdict.group(2) != null);
    }
    Map<String, Boolean> known = new TreeMap<>();
    for (VerdictWord word : VerdictWord.values()) {
      known.put(word.word(), word.takesPoint());
    }
    assertThat(takesPoint).isEqualTo(known);
  }

  private static Map<String, String> propertiesInSource(String fact) throws IOException {
    String source = Files.readString(FACTS.resolve(fact + ".java"));
    Map<String, String> properties = new TreeMap<>();
    Matcher components = COMPONENTS.matcher(source);
    if (components.find()) {
      collect(COMPONENT.matcher(components.group(1)), properties);
    }
    collect(ACCESSOR.matcher(source), properties);
    return properties;
  }

  private static void collect(Matcher found, Map<String, String> properties) {
    while (found.find()) {
      properties.put(found.group(2), found.group(1));
    }
  }
}
