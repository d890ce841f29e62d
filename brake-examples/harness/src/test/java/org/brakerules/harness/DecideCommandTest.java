package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecideCommandTest {

  private static final String WORN = DemoJob.WORN_CAMSHAFT.path();
  private static final String WHEEL_ON = DemoJob.WHEEL_ON.path();

  @TempDir private Path folder;

  @Test
  void parts_left_undecided_give_exit_code_1() {
    CommandLineRun run = CommandLineRun.of("decide", WORN);

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.err()).isEmpty();
  }

  /**
   * One file alone goes past the parser of options, which every other command line goes through.
   */
  @Test
  void one_file_is_answered_as_the_parser_of_options_would_have_it_answered() {
    String missing = folder.resolve("missing.json").toString();

    assertThat(CommandLineRun.of("decide", WORN))
        .isEqualTo(CommandLineRun.of("decide", "--color", "auto", WORN));
    assertThat(CommandLineRun.of("decide", WORN, "--json"))
        .isEqualTo(CommandLineRun.of("decide", "--json", WORN))
        .isEqualTo(CommandLineRun.of("decide", "--json", "--color", "auto", WORN));
    assertThat(CommandLineRun.of("decide", missing))
        .isEqualTo(CommandLineRun.of("decide", "--color", "auto", missing));
    assertThat(CommandLineRun.of("decide", missing).exitCode()).isEqualTo(4);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "decide",
        "decide --json",
        "decide -",
        "decide -h",
        "decide --help",
        "decide @files",
        "decide job.json --stacktrace",
        "decide job.json other.json",
        "decide --json --json job.json",
        "plan job.json",
        "--version"
      })
  void every_other_command_line_goes_through_the_parser_of_options(String line) {
    Terminal terminal = Terminal.ofThisProcess();

    assertThat(DecideCommand.plain(terminal, line.split(" "))).isEmpty();
    assertThat(DecideCommand.plain(terminal, "decide", "job.json")).isPresent();
  }

  @Test
  void brake_in_which_every_part_is_decided_and_none_on_hold_gives_exit_code_0() {
    CommandLineRun run = CommandLineRun.of("decide", DemoJob.FINISHED_REBUILD.path());

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("0 on hold; 0 to replace, 0 undecided");
  }

  @Test
  void reline_whose_proofs_are_still_open_names_the_strokes_to_be_read() {
    CommandLineRun run = CommandLineRun.of("decide", DemoJob.CLEAN_RELINE.path());

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.unwrapped())
        .contains("0 on hold; 14 to replace, 1 undecided")
        .contains("chamber: measure push-rod stroke with the brake fully applied")
        .contains("at a reservoir pressure from 80 psi to 90 psi");
  }

  @Test
  void brake_whose_essential_parts_are_stated_away_gets_them_fitted() throws IOException {
    String job =
        """
        {
          "date": "2026-11-20", "ruleSet": "us-federal", "scope": "wheel-on",
          "units": [{ "axles": [{ "axle": 1, "wheelEnds": [{ "side": "left", "parts": [
            { "part": "camshaft", "condition": "new", "adjusterMovesFirst": "not-seen" },
            { "part": "snap-ring", "station": "spline-end", "presence": "not-fitted" },
            { "part": "camshaft-bracket", "presence": "not-fitted" },
            { "part": "slack-adjuster", "presence": "not-fitted" },
            { "part": "clevis", "presence": "not-fitted" },
            { "part": "jam-nut", "presence": "not-fitted" },
            { "part": "push-rod", "presence": "not-fitted" },
            { "part": "chamber", "presence": "not-fitted" },
            { "part": "hose", "presence": "not-fitted" },
            { "part": "clevis-pin", "station": "large", "presence": "not-fitted" },
            { "part": "cotter-pin", "station": "large", "presence": "not-fitted" }
          ]}]}]}]
        }
        """;

    CommandLineRun run = CommandLineRun.withInput(job, "decide", "-");

    assertThat(run.out())
        .contains("The clevis is missing.")
        .contains("The tube or bracket is missing.")
        .contains("8 to replace");
  }

  @Test
  void job_from_standard_input_gives_the_same_report_as_from_its_file() throws IOException {
    CommandLineRun run = CommandLineRun.withInput(DemoJob.WORN_CAMSHAFT.text(), "decide", "-");

    assertThat(run.out()).isEqualTo(CommandLineRun.of("decide", WORN).out());
  }

  @Test
  void standard_input_named_twice_is_wrong_usage() {
    CommandLineRun run = CommandLineRun.of("decide", "-", "-");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.complaints())
        .containsExactly(
            "brake decide: standard input can be read once only; name - once"
                + " (see brake decide --help)");
  }

  @Test
  void several_files_give_several_reports_each_with_the_name_of_its_file() {
    CommandLineRun run = CommandLineRun.of("decide", WORN, WHEEL_ON);

    assertThat(run.out().lines().filter(line -> line.startsWith("Brake job "))).hasSize(2);
    assertThat(run.out()).contains("  File        " + WORN).contains("  File        " + WHEEL_ON);
  }

  @Test
  void one_file_as_json_is_a_document_over_several_lines() {
    CommandLineRun run = CommandLineRun.of("decide", "--json", WORN);

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).startsWith("{\n  \"ruleBase\": {").endsWith("}\n");
  }

  @Test
  void several_files_as_json_are_one_line_each() {
    CommandLineRun run = CommandLineRun.of("decide", "--json", WORN, WHEEL_ON);

    assertThat(run.out().lines())
        .hasSize(2)
        .allSatisfy(line -> assertThat(line).startsWith("{\"ruleBase\":").endsWith("}"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          empty file        | ''                 | line 1, column 1: found an empty document
          no JSON           | 'brake'            | line 1, column 1
          no job            | '[]'               | line 1, column 1
          fields missing    | '{}'               | found no "date"
          field unknown     | '{ "daet": "" }'   | /daet: found an unknown field
          """)
  void file_that_holds_no_job_gives_exit_code_3_and_nothing_on_standard_output(
      String name, String content, String complaint) throws IOException {
    Path file = Files.writeString(folder.resolve("job.json"), content);

    CommandLineRun run = CommandLineRun.of("decide", file.toString());

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints())
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line).startsWith(file + ": line "))
        .anySatisfy(line -> assertThat(line).contains(complaint));
  }

  @Test
  void every_problem_of_a_file_is_one_line() {
    CommandLineRun run = CommandLineRun.withInput("{ \"units\": 3 }", "decide", "-");

    assertThat(run.complaints()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(run.err()).doesNotContain("\tat ").contains("standard input: line 1");
  }

  @Test
  void unknown_rule_set_is_refused_with_the_nearest_one() throws IOException {
    String job = DemoJob.WORN_CAMSHAFT.text().replace("us-federal", "us-federl");

    CommandLineRun run = CommandLineRun.withInput(job, "decide", "-");

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.complaints())
        .containsExactly(
            "standard input: \"us-federl\" is no rule set of this rule base;"
                + " did you mean \"us-federal\"?");
  }

  @Test
  void missing_file_gives_exit_code_4() {
    CommandLineRun run = CommandLineRun.of("decide", "no-such-file.json");

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints()).containsExactly("no-such-file.json: no such file");
  }

  @Test
  void directory_instead_of_a_file_gives_exit_code_4() {
    CommandLineRun run = CommandLineRun.of("decide", folder.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints())
        .containsExactly(folder + ": is a directory; name a file with a job");
  }

  @Test
  void of_several_files_the_highest_exit_code_counts_and_the_good_ones_are_decided() {
    CommandLineRun run = CommandLineRun.withInput("{}", "decide", "no-such-file.json", "-", WORN);

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.out()).startsWith("Brake job Harrowmere council yard, sweeper 4");
  }

  @Test
  void no_file_is_wrong_usage() {
    CommandLineRun run = CommandLineRun.of("decide");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.complaints())
        .containsExactly(
            "brake decide: Missing required parameter: 'FILE' (see brake decide --help)");
  }

  @Test
  void misspelt_option_is_answered_with_the_nearest_one() {
    CommandLineRun run = CommandLineRun.of("decide", "--jso", WORN);

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("Unknown option: '--jso'; did you mean --json?");
  }

  @Test
  void no_colours_are_written_where_no_person_looks_at_a_terminal() {
    assertThat(CommandLineRun.of("decide", WORN, WHEEL_ON).out()).doesNotContain("\u001b");
  }

  @Test
  void colours_can_be_asked_for_and_change_nothing_but_colours() {
    String coloured = CommandLineRun.of("decide", "--color=always", WHEEL_ON).out();

    assertThat(coloured).contains("\u001b[");
    assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", ""))
        .isEqualTo(CommandLineRun.of("decide", "--color=never", WHEEL_ON).out());
  }

  @Test
  void closed_pipe_is_one_line_and_no_crash() {
    StringWriter err = new StringWriter();
    PrintWriter closed = new PrintWriter(new ClosedPipe());
    Terminal terminal = new Terminal(InputStream.nullInputStream(), closed, new PrintWriter(err));

    int exitCode = Main.run(terminal, "decide", WORN);

    assertThat(exitCode).isEqualTo(4);
    assertThat(err.toString().lines())
        .containsExactly("brake: the output was cut off, not everything could be written");
  }

  @Test
  void mistake_in_this_program_is_one_line_and_exit_code_70() {
    CommandLineRun run = CommandLineRun.of(new MistakenStream(), "decide", "-");

    assertThat(run.exitCode()).isEqualTo(70);
    assertThat(run.complaints())
        .containsExactly(
            "brake: internal failure, a mistake in this program:"
                + " java.lang.IllegalStateException: on purpose (see --stacktrace)");
  }

  @Test
  void too_little_memory_is_told_as_that_and_not_as_a_mistake() {
    InputStream greedy =
        new InputStream() {
          @Override
          public int read() {
            throw new OutOfMemoryError("Java heap space");
          }
        };

    CommandLineRun run = CommandLineRun.of(greedy, "decide", "-");

    assertThat(run.exitCode()).isEqualTo(70);
    assertThat(run.complaints())
        .containsExactly(
            "brake: the memory that Java was given is used up; give it more, as with java -Xmx512m");
  }

  @Test
  void mistake_in_this_program_can_be_located() {
    CommandLineRun run = CommandLineRun.of(new MistakenStream(), "decide", "--stacktrace", "-");

    assertThat(run.exitCode()).isEqualTo(70);
    assertThat(run.err()).contains("\tat " + MistakenStream.class.getName());
  }

  @Test
  void steering_characters_in_a_file_name_do_not_reach_the_terminal() {
    CommandLineRun run = CommandLineRun.of("decide", "\u001b[31mjob.json");

    assertThat(run.err()).doesNotContain("\u001b").contains("?[31mjob.json: ");
  }

  @Test
  void foreign_class_loader_of_the_calling_thread_changes_nothing() throws IOException {
    String report = CommandLineRun.of("decide", WORN).out();
    Thread thread = Thread.currentThread();
    ClassLoader own = thread.getContextClassLoader();
    try (URLClassLoader foreign = new URLClassLoader(new URL[0], null)) {
      thread.setContextClassLoader(foreign);
      assertThat(CommandLineRun.of("decide", WORN).out()).isEqualTo(report);
    } finally {
      thread.setContextClassLoader(own);
    }
  }

  private static final class MistakenStream extends InputStream {
    @Override
    public int read() {
      throw new IllegalStateException("on purpose");
    }
  }

  private static final class ClosedPipe extends OutputStream {
    @Override
    public void write(int b) throws IOException {
      throw new IOException("Broken pipe");
    }
  }
}
