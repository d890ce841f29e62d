package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.brakerules.harness.reference.ReferenceBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReferenceCommandTest {

  private static final Path RULES = Path.of("../../brake-rules/src/main/resources");

  @TempDir private Path folder;

  @Test
  void markdown_goes_to_a_folder_that_is_made() throws IOException {
    Path made = folder.resolve("made/here");

    CommandLineRun run = CommandLineRun.of("reference", made.toString());

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).endsWith(" pages written to " + made + System.lineSeparator());
    assertThat(made.resolve("limits.md"))
        .hasContent(ReferenceBook.standard().pages().get("limits.md"));
  }

  @Test
  void html_goes_to_one_file() throws IOException {
    Path file = folder.resolve("made/book.html");

    CommandLineRun run = CommandLineRun.of("reference", "--format", "html", file.toString());

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).isEqualTo("book written to " + file + System.lineSeparator());
    assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
  }

  @Test
  void a_file_where_the_folder_should_be_is_told() throws IOException {
    Path taken = Files.writeString(folder.resolve("taken"), "a file");

    CommandLineRun run = CommandLineRun.of("reference", taken.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints())
        .containsExactly(
            "brake reference: " + taken + " is a file; name a folder, or ask for --format html");
    assertThat(taken).hasContent("a file");
  }

  @Test
  void a_folder_where_the_file_should_be_is_told() {
    CommandLineRun run = CommandLineRun.of("reference", "--format", "html", folder.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints())
        .containsExactly(
            "brake reference: %s is a folder; name a file, such as %s"
                .formatted(folder, folder.resolve("book.html")));
  }

  @Test
  void a_file_in_the_way_of_a_folder_is_told() throws IOException {
    Path taken = Files.writeString(folder.resolve("components"), "a file");

    CommandLineRun run = CommandLineRun.of("reference", folder.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints())
        .containsExactly(
            "brake reference: "
                + taken
                + " is a file, where a folder is needed; name another place");
  }

  @Test
  void a_folder_in_the_way_of_a_page_is_told() throws IOException {
    Path taken = Files.createDirectory(folder.resolve("limits.md"));

    CommandLineRun run = CommandLineRun.of("reference", folder.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints())
        .containsExactly(
            "brake reference: "
                + taken
                + " is a folder, where a file is to be written; name another place");
  }

  @Test
  void a_place_below_a_file_is_told_without_the_name_of_an_exception() throws IOException {
    Path taken = Files.writeString(folder.resolve("taken"), "a file");
    String below = taken.resolve("below/book.html").toString();

    CommandLineRun run = CommandLineRun.of("reference", "--format", "html", below);

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints())
        .singleElement()
        .asString()
        .startsWith("brake reference: " + taken)
        .endsWith("; name another place")
        .doesNotContain("Exception");
  }

  @Test
  void rules_in_a_folder_give_the_pages_that_the_build_would_make_of_them() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("reference", "--rules", RULES.toString(), folder.toString());

    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    ReferenceBook.standard()
        .pages()
        .forEach((name, page) -> assertThat(folder.resolve(name)).hasContent(page));
  }

  @Test
  void an_author_sees_his_rule_before_anything_is_built() throws IOException {
    Path rules = RulesCopy.in(folder.resolve("rules"));
    for (String file : List.of("hose/hose.drl", "hose/hose.cases.yaml", "decision-tables.csv")) {
      Path renamed = rules.resolve("org/brakerules/rules").resolve(file);
      Files.writeString(renamed, Files.readString(renamed).replace("HOSE-030", "HOSE-040"));
    }
    Path pages = folder.resolve("pages");

    CommandLineRun run =
        CommandLineRun.of("reference", "--rules", rules.toString(), pages.toString());

    assertThat(run.exitCode()).isZero();
    assertThat(Files.readString(pages.resolve("rules.md"))).contains("HOSE-040");
    assertThat(Files.readString(pages.resolve("components/hose.md")))
        .contains("- Not in a release of this program: `HOSE-040`.\n");
  }

  @Test
  void rules_with_mistakes_are_sent_to_the_linter_and_nothing_is_written() throws IOException {
    Path rules = RulesCopy.in(folder.resolve("rules"));
    Path hose = rules.resolve("org/brakerules/rules/hose/hose.drl");
    Files.writeString(hose, Files.readString(hose).replace("verdict.replace", "verdict.replase"));
    Path pages = folder.resolve("pages");

    CommandLineRun run =
        CommandLineRun.of("reference", "--rules", rules.toString(), pages.toString());

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.complaints())
        .hasSize(4)
        .contains(
            "org/brakerules/rules/hose/hose.drl:17:11: [unknown-verdict] HOSE-010: there is no"
                + " verdict \"replase\" -> write \"replace\"")
        .endsWith(rules + ": 3 problems; mend them first");
    assertThat(pages).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          `# Hose [limits](limitz.md)` | links to "limitz.md", which is no page of the book; link to one that is, such as limits.md, or take the link out
          Words without a title.     | does not begin with its title; write it on the first line, behind "# "
          """)
  void a_page_of_the_author_that_cannot_stand_in_the_book_is_told(String text, String mistake)
      throws IOException {
    Path rules = RulesCopy.in(folder.resolve("rules"));
    Files.writeString(rules.resolve("org/brakerules/rules/hose/hose.md"), text);
    Path book = folder.resolve("book.html");

    CommandLineRun run =
        CommandLineRun.of(
            "reference", "--format", "html", "--rules", rules.toString(), book.toString());

    assertThat(run.complaints()).containsExactly("components/hose.md " + mistake);
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(book).doesNotExist();
  }

  @Test
  void another_format_is_wrong_usage() {
    CommandLineRun run = CommandLineRun.of("reference", "--format", "pdf", folder.toString());

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.complaints()).singleElement().asString().containsIgnoringCase("html");
  }
}
