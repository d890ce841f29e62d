package org.brakerules.linter;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.linter.internal.text.SourceText;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Rule files with several mistakes. Beside each stands what the linter must print of it, word for
 * word, and under every line what an author changes who does nothing but what the line says.
 */
class BrokenFilesTest {

  private static final Pattern TOLD =
      Pattern.compile("(\\d+):(\\d+) .* -> (.*)\n    (.*) => ?(.*)\n");
  private static final Pattern TO_WRITE =
      Pattern.compile("write \"(.+)\" before its closing bracket");

  @TempDir Path folder;

  /** One change that a printed line asks for. */
  private record Change(int line, int column, String remedy, String written, String instead) {

    boolean isWhatTheRemedySays() {
      Matcher toWrite = TO_WRITE.matcher(remedy);
      return instead.isEmpty()
          ? remedy.startsWith("take ")
          : remedy.contains(instead) || (toWrite.find() && instead.contains(toWrite.group(1)));
    }

    String applied(String text) {
      int start = new SourceText("", text).lineStart(line) + column - 1;
      assertThat(text.substring(start)).startsWith(written);
      return text.substring(0, start) + instead + text.substring(start + written.length());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"misspelt-names", "wrong-ids", "loose-metadata", "loose-conditions", "never-met"})
  void a_broken_file_is_told_word_for_word_and_mended_as_told(String name) throws IOException {
    String broken = resource(name + ".drl");
    String told = resource(name + ".txt");
    SmallRuleBase rules = new SmallRuleBase(folder);

    assertThat(String.join("\n", rules.problemsOfFile(broken)))
        .isEqualTo(told.replaceAll("\n    .*", "").strip());

    List<Change> changes = changes(told);
    assertThat(changes).hasSizeBetween(2, 3).allMatch(Change::isWhatTheRemedySays);
    String mended = broken;
    for (int last = changes.size() - 1; last >= 0; last--) {
      mended = changes.get(last).applied(mended); // the last first, so that places stay
    }
    assertThat(rules.problemsOfFile(mended)).isEmpty();
  }

  private static List<Change> changes(String told) {
    List<Change> changes = new ArrayList<>();
    Matcher line = TOLD.matcher(told);
    while (line.find()) {
      changes.add(
          new Change(
              Integer.parseInt(line.group(1)),
              Integer.parseInt(line.group(2)),
              line.group(3),
              line.group(4),
              line.group(5)));
    }
    return changes;
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = BrokenFilesTest.class.getResourceAsStream("broken/" + name)) {
      return new String(requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8)
          .replace("\r\n", "\n");
    }
  }
}
