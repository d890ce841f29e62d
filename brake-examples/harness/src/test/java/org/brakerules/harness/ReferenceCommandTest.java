package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.brakerules.BrakeRules;
import org.brakerules.harness.reference.ReferenceBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReferenceCommandTest {

  @TempDir private Path folder;

  @Test
  void markdown_goes_to_a_folder_that_is_made() throws IOException {
    Path made = folder.resolve("made/here");

    CommandLineRun run = CommandLineRun.of("reference", made.toString());

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).endsWith(" pages written to " + made + System.lineSeparator());
    assertThat(made.resolve("limits.md"))
        .hasContent(ReferenceBook.pages(BrakeRules.standard()).get("limits.md"));
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
  void another_format_is_wrong_usage() {
    CommandLineRun run = CommandLineRun.of("reference", "--format", "pdf", folder.toString());

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.complaints()).singleElement().asString().containsIgnoringCase("html");
  }
}
