package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A document that stops being JSON, or is larger than any job, has one problem. */
class NotJsonTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          ``                  | 1 | 1  | ``  | an empty document   | a brake job: an object in braces
          hello               | 1 | 1  | ``  | hello               | a brake job: an object in braces
          <job/>              | 1 | 1  | ``  | <                   | a brake job: an object in braces
          []                  | 1 | 1  | ``  | an empty array      | a brake job: an object in braces
          "job"               | 1 | 1  | ``  | "job"               | a brake job: an object in braces
          null                | 1 | 1  | ``  | null                | a brake job: an object in braces
          {                   | 1 | 2  | ``  | the end of the document | the rest of it; a closing quote, bracket or brace is missing
          { "date": "2026     | 1 | 16 | /date | the end of the document | the rest of it; a closing quote, bracket or brace is missing
          { "a": 1, }         | 1 | 11 | /a  | }                   | no comma before a closing bracket or brace
          { "a": [1, ] }      | 1 | 12 | /a/1 | ]                  | no comma before a closing bracket or brace
          { 'a': 1 }          | 1 | 3  | ``  | '                   | straight double quotes around names and texts
          { "a": “x” }        | 1 | 8  | /a  | “                   | straight double quotes around names and texts
          { "a": 1 "b": 2 }   | 1 | 10 | /a  | "                   | a comma before the next field or value
          { "a": 1 // one     | 1 | 10 | /a  | /                   | no comment, since JSON has none
          { "a": NaN }        | 1 | 8  | /a  | NaN                 | a text in double quotes, a number, an object or an array
          { "a": -Infinity }  | 1 | 9  | /a  | Infinity            | a text in double quotes, a number, an object or an array
          { "a": seen }       | 1 | 8  | /a  | seen                | a text in double quotes, a number, an object or an array
          { "a": True }       | 1 | 8  | /a  | True                | a text in double quotes, a number, an object or an array
          { "a": "\\q" }      | 1 | 10 | /a  | q                   | \\\\ for a backslash in a text
          { "a": .5 }         | 1 | 8  | /a  | .                   | JSON; a quote, comma, colon, bracket or brace is missing or one too many here
          { "a" 1 }           | 1 | 7  | /a  | 1                   | JSON; a quote, comma, colon, bracket or brace is missing or one too many here
          { "a": 1 ]          | 1 | 10 | /a  | ]                   | JSON; a quote, comma, colon, bracket or brace is missing or one too many here
          {} {}               | 1 | 4  | ``  | {                   | nothing after the end of the job
          {} x                | 1 | 4  | ``  | x                   | nothing after the end of the job
          {} }                | 1 | 4  | ``  | }                   | nothing after the end of the job
          """)
  void the_place_is_told_and_what_to_write(
      String document, int line, int column, String pointer, String found, String expected) {
    assertThat(problemOf(document)).isEqualTo(new Problem(pointer, line, column, found, expected));
  }

  @Test
  void a_line_break_inside_a_text_is_told_at_its_place() {
    assertThat(problemOf("{\n  \"a\": \"x\ny\" }"))
        .isEqualTo(
            new Problem(
                "/a",
                2,
                10,
                "\\u{a}",
                "no line break, tab or other control character inside a text or name"));
  }

  static Stream<String> largerThanAnyJob() {
    return Stream.of(
        "[".repeat(33),
        "{\"a\":".repeat(100_000),
        "{ \"a\": \"" + "x".repeat(20_001) + "\" }",
        "{ \"" + "x".repeat(201) + "\": 1 }",
        "{ \"a\": " + "1".repeat(41) + " }",
        "{ \"a\": 0." + "1".repeat(41) + " }");
  }

  @ParameterizedTest
  @MethodSource("largerThanAnyJob")
  void a_document_deeper_or_longer_than_any_job_is_refused(String document) {
    Problem problem = problemOf(document);

    assertThat(problem.found()).isEqualTo("more than any brake job has");
    assertThat(problem.expected())
        .isEqualTo("at most 32 levels, texts of 20000 characters, names of 200 and numbers of 40");
  }

  @Test
  void a_document_of_more_than_5_megabytes_is_refused() {
    Problem tooLarge =
        new Problem("", 1, 1, "a document of more than 5 MB", "a brake job of 5 MB at most");
    String document = " ".repeat(5_000_001);

    assertThat(problemOf(document)).isEqualTo(tooLarge);
    assertThat(problemOf(document.getBytes(StandardCharsets.UTF_8))).isEqualTo(tooLarge);
  }

  @Test
  void a_document_of_5_megabytes_is_read() {
    String document = " ".repeat(5_000_000 - SampleJobs.full().length()) + SampleJobs.full();

    assertThat(JobReader.read(document)).isEqualTo(JobReader.read(SampleJobs.full()));
  }

  @Test
  void bytes_that_are_not_utf_8_are_told_at_their_place() {
    byte[] document = "{\n \"reference\": \"Größe\" }".getBytes(StandardCharsets.ISO_8859_1);

    assertThat(problemOf(document))
        .isEqualTo(new Problem("", 2, 18, "the byte F6", "a document saved as UTF-8"));
  }

  @Test
  void a_document_that_ends_within_a_character_is_not_utf_8() {
    byte[] document = {'{', (byte) 0xC3};

    assertThat(problemOf(document))
        .isEqualTo(new Problem("", 1, 2, "the byte C3", "a document saved as UTF-8"));
  }

  @Test
  void utf_16_is_not_utf_8() {
    assertThat(problemOf("{}".getBytes(StandardCharsets.UTF_16)))
        .isEqualTo(new Problem("", 1, 1, "the byte FE", "a document saved as UTF-8"));
  }

  private static Problem problemOf(String document) {
    return onlyProblem(
        catchThrowableOfType(InvalidJobException.class, () -> JobReader.read(document)));
  }

  private static Problem problemOf(byte[] document) {
    return onlyProblem(
        catchThrowableOfType(
            InvalidJobException.class, () -> JobReader.read(new ByteArrayInputStream(document))));
  }

  private static Problem onlyProblem(InvalidJobException refused) {
    assertThat(refused.problems()).hasSize(1);
    return refused.problems().get(0);
  }
}
