package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BatchCommandTest {

  private static final Path WEEK = Path.of("..", "batches", "harrowmere-week.jsonl");
  private static final int BAD_LINE = 6;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @TempDir private Path folder;

  @Test
  void the_week_has_every_demo_job_and_one_bad_line() throws IOException {
    List<JsonNode> jobs = new ArrayList<>();
    for (DemoJob job : DemoJob.values()) {
      jobs.add(MAPPER.readTree(job.text()));
    }

    List<String> lines = new ArrayList<>(Files.readAllLines(WEEK));
    lines.remove(BAD_LINE - 1);

    for (int i = 0; i < lines.size(); i++) {
      assertThat(MAPPER.readTree(lines.get(i))).isEqualTo(jobs.get(i));
    }
    assertThat(lines).hasSameSizeAs(jobs);
  }

  @Test
  void full_form_is_what_decide_prints_of_several_files() throws IOException {
    List<String> args = new ArrayList<>(List.of("decide", "--json"));
    Arrays.stream(DemoJob.values()).map(DemoJob::path).forEach(args::add);

    CommandLineRun run = batch(WEEK, "out.jsonl", "--form", "full", "--threads", "3");

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(folder.resolve("out.jsonl"))
        .hasContent(CommandLineRun.of(args.toArray(String[]::new)).out());
  }

  @Test
  void compact_form_has_a_key_and_one_line_for_each_decision_with_its_number() throws IOException {
    batch(WEEK, "out.jsonl");

    List<String> lines = Files.readAllLines(folder.resolve("out.jsonl"));
    assertThat(lines.get(0)).startsWith("{\"key\":1,\"ruleBase\":");
    assertThat(lines.subList(1, lines.size()).stream().map(line -> tree(line).path("line").asInt()))
        .containsExactly(1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12);
  }

  @Test
  void a_bad_line_goes_to_the_rejects_and_the_exit_code_tells() throws IOException {
    CommandLineRun run = batch(WEEK, "out.jsonl");

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.complaints())
        .containsExactly(
            "1 line has no decision; see " + folder.resolve("out.jsonl.rejects.jsonl"));
    JsonNode reject = tree(Files.readString(folder.resolve("out.jsonl.rejects.jsonl")));
    assertThat(reject.path("line").asInt()).isEqualTo(BAD_LINE);
    assertThat(reject.path("text").asText()).isEqualTo(Files.readAllLines(WEEK).get(BAD_LINE - 1));
  }

  @Test
  void a_batch_without_a_bad_line_ends_with_0_and_an_empty_file_of_rejects() throws IOException {
    CommandLineRun run = batch(goodWeek(), "out.jsonl");

    assertThat(run.exitCode()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(folder.resolve("out.jsonl.rejects.jsonl")).isEmptyFile();
    assertThat(names()).doesNotContain("out.jsonl.part", "out.jsonl.state");
  }

  @Test
  void summary_counts_what_decide_says_line_by_line() throws IOException {
    Map<String, Integer> expected = new TreeMap<>();
    Map<String, Integer> reasons = new TreeMap<>();
    int complete = 0;
    for (DemoJob job : DemoJob.values()) {
      JsonNode decision = tree(CommandLineRun.of("decide", "--json", job.path()).out());
      complete += decision.path("complete").asBoolean() ? 1 : 0;
      for (JsonNode part : decision.path("decisions")) {
        String kind = part.path("part").asText().split("/(?:left|right)/")[1].split("/")[0];
        expected.merge(kind + " " + part.path("disposition").asText(), 1, Integer::sum);
        expected.merge(kind + " holds", part.path("hold").asBoolean() ? 1 : 0, Integer::sum);
        part.path("reasons")
            .forEach(reason -> reasons.merge(reason.path("rule").asText(), 1, Integer::sum));
      }
    }

    batch(WEEK, "out.jsonl", "--summary", folder.resolve("summary.json").toString());

    JsonNode summary = tree(Files.readString(folder.resolve("summary.json")));
    Map<String, Integer> counted = new TreeMap<>();
    for (Map.Entry<String, JsonNode> kind : summary.path("parts").properties()) {
      for (Map.Entry<String, JsonNode> count : kind.getValue().properties()) {
        if (count.getValue().asInt() > 0 || count.getKey().equals("holds")) {
          counted.put(kind.getKey() + " " + count.getKey(), count.getValue().asInt());
        }
      }
    }
    assertThat(counted).isEqualTo(expected);
    Map<String, Integer> countedReasons = new TreeMap<>();
    summary
        .path("reasons")
        .properties()
        .forEach(reason -> countedReasons.put(reason.getKey(), reason.getValue().asInt()));
    assertThat(countedReasons).isEqualTo(reasons);
    assertThat(summary.path("jobs").asInt()).isEqualTo(DemoJob.values().length);
    assertThat(summary.path("complete").asInt()).isEqualTo(complete);
    assertThat(summary.path("rejects").path("invalid").asInt()).isEqualTo(1);
    assertThat(summary.path("mostFrequentReasons").get(0).path("rule").asText())
        .isEqualTo("GENERAL-030");
  }

  @Test
  void summary_is_printed_and_drawn_with_a_description_in_words() throws Exception {
    Path chart = folder.resolve("chart.svg");

    CommandLineRun run = batch(WEEK, "out.jsonl", "--chart", chart.toString());

    assertThat(run.out())
        .startsWith("11 jobs decided: 2 with every part decided")
        .contains("1 line rejected: 0 blank, 1 no job", " % undecided\n", "GENERAL-030  ");
    var document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(chart.toFile());
    assertThat(document.getElementsByTagName("title").item(0).getTextContent())
        .startsWith("11 jobs decided, 742 parts, ");
    assertThat(document.getElementsByTagName("desc").item(0).getTextContent())
        .contains(
            "1 line without a decision", "camshaft: 8 reuse, 1 adjust, 8 undecided, 3 replace")
        .contains("GENERAL-030 Part not inspected: 113");
    assertThat(Files.readString(chart)).doesNotContainPattern("#[0-9a-fA-F]{3}|rgb|red|green|blue");
  }

  @Test
  void packed_input_and_output_hold_the_same_lines() throws IOException {
    Path packed = folder.resolve("week.jsonl.gz");
    try (var out = new GZIPOutputStream(Files.newOutputStream(packed))) {
      Files.copy(WEEK, out);
    }
    batch(WEEK, "plain.jsonl");

    CommandLineRun run = batch(packed, "packed.jsonl.gz");

    assertThat(run.exitCode()).isEqualTo(3);
    try (InputStream in =
        new GZIPInputStream(Files.newInputStream(folder.resolve("packed.jsonl.gz")))) {
      assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
          .isEqualTo(Files.readString(folder.resolve("plain.jsonl")));
    }
  }

  @Test
  void standard_input_and_output_are_as_good_as_files() throws IOException {
    batch(WEEK, "plain.jsonl");

    CommandLineRun run =
        CommandLineRun.withInput(
            Files.readString(WEEK), "batch", "-", "--out", "-", "--rejects", rejects());

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEqualTo(Files.readString(folder.resolve("plain.jsonl")));
    assertThat(run.err()).startsWith("11 jobs decided: ");
    assertThat(Path.of(rejects()))
        .hasSameTextualContentAs(folder.resolve("plain.jsonl.rejects.jsonl"));
  }

  @Test
  void a_reader_that_goes_away_ends_the_batch_with_one_message_and_no_file_of_rejects()
      throws IOException {
    StringWriter err = new StringWriter();
    Terminal terminal =
        new Terminal(
            new ByteArrayInputStream(Files.readAllBytes(WEEK)),
            new PrintWriter(new Gone()),
            new PrintWriter(err));

    int exitCode = Main.run(terminal, "batch", "-", "--out", "-", "--rejects", rejects());

    assertThat(exitCode).isEqualTo(4);
    assertThat(err).hasToString("brake: the output was cut off, not everything could be written\n");
    assertThat(names()).isEmpty();
  }

  @Test
  void an_input_that_breaks_off_is_gone_on_with_once_it_is_whole() throws IOException {
    byte[] whole = packedWeeks(20);
    Path input = folder.resolve("weeks.jsonl.gz");
    Files.write(input, Arrays.copyOf(whole, whole.length / 2));

    CommandLineRun broken = batch(input, "out.jsonl");

    assertThat(broken.exitCode()).isEqualTo(4);
    assertThat(broken.complaints())
        .containsExactly(
            input
                + ": ends in the middle of packed data (gzip); it is not whole; what is decided is"
                + " kept, the same command goes on once it is mended");
    assertThat(folder.resolve("out.jsonl")).doesNotExist();
    Files.write(input, whole);
    CommandLineRun after = batch(input, "out.jsonl");
    assertThat(after.exitCode()).isEqualTo(3);
    assertThat(after.complaints().get(0))
        .matches("goes on after line \\d+, where an unfinished run stopped");
    batch(input, "undisturbed.jsonl");
    assertThat(folder.resolve("out.jsonl"))
        .hasSameBinaryContentAs(folder.resolve("undisturbed.jsonl"));
    assertThat(after.out()).startsWith("220 jobs decided");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --form full          | that wrote --form compact, not full
          --rejects elsewhere  | that wrote its rejects to
          """)
  void an_unfinished_run_is_not_gone_on_with_otherwise(String option, String message)
      throws IOException {
    Path input = unfinished();
    String[] words = option.split(" ");

    CommandLineRun run =
        batch(input, "out.jsonl", words[0], words[1].replace("elsewhere", rejects()));

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err())
        .contains("out.jsonl.state tells of an unfinished run " + message)
        .contains("call it as before, or start afresh with --again");
    assertThat(batch(input, "out.jsonl").err()).contains("goes on after line");
  }

  @Test
  void an_unfinished_run_is_not_gone_on_with_from_another_input() throws IOException {
    unfinished();

    CommandLineRun run = batch(WEEK, "out.jsonl");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("that read another input: the first ");
  }

  @Test
  void an_unfinished_run_of_another_rule_base_is_not_gone_on_with() throws IOException {
    Path input = unfinished();
    Path state = folder.resolve("out.jsonl.state");
    Files.writeString(
        state,
        Files.readString(state)
            .replaceFirst("\"fingerprint\": \"[0-9a-f]+\"", "\"fingerprint\": \"00ff\""));

    CommandLineRun run = batch(input, "out.jsonl");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("that was decided by rule base 0.1.0 (00ff), not by 0.1.0 (");
  }

  @Test
  void an_unfinished_run_whose_output_was_taken_away_is_not_gone_on_with() throws IOException {
    Path input = unfinished();
    Files.delete(folder.resolve("out.jsonl.part"));

    CommandLineRun run = batch(input, "out.jsonl");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("that wrote files that are not there any more");
    assertThat(names()).doesNotContain("out.jsonl", "out.jsonl.part");
  }

  @Test
  void a_state_that_is_no_text_is_told_like_a_damaged_one() throws IOException {
    unfinished();
    Files.write(folder.resolve("out.jsonl.state"), new byte[] {(byte) 0xFF, 0, (byte) 0xC3});

    CommandLineRun refused = batch(WEEK, "out.jsonl");

    assertThat(refused.exitCode()).isEqualTo(2);
    assertThat(refused.err()).contains("is no state of an unfinished batch, or is damaged");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{}", "no state", "{\"state\":1}", "[]"})
  void a_damaged_state_is_told_and_again_starts_afresh(String damaged) throws IOException {
    unfinished();
    Files.writeString(folder.resolve("out.jsonl.state"), damaged);

    CommandLineRun refused = batch(WEEK, "out.jsonl");
    CommandLineRun afresh = batch(WEEK, "out.jsonl", "--again");

    assertThat(refused.exitCode()).isEqualTo(2);
    assertThat(refused.err()).contains("is no state of an unfinished batch, or is damaged");
    assertThat(afresh.exitCode()).isEqualTo(3);
    assertThat(afresh.out()).startsWith("11 jobs decided");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          IN                              | 2 | Missing required option: '--out=OUT'
          missing --out OUT               | 4 | missing: no such file
          . --out OUT                     | 4 | .: is a directory; name a file with jobs
          IN --out .                      | 4 | . is a folder, where a file is to be written
          IN --out nowhere/out            | 4 | nowhere/out: there is no folder
          IN --out OUT --summary nowhere/s | 4 | nowhere/s: there is no folder
          IN --out IN                     | 2 | is named twice, as the jobs and as --out
          IN --out OUT --rejects OUT      | 2 | is named twice, as --out and as --rejects
          IN --out OUT --rejects OUT.part | 2 | is named twice, as --rejects and as a file of the unfinished run
          IN --out OUT --chart OUT.state.new | 2 | is named twice, as --chart and as a file of the unfinished run
          IN --out OUT --summary s --chart s.part | 2 | is named twice, as --chart and as a file of the unfinished run
          IN --out -                      | 2 | name a file for lines without a decision
          IN --out OUT --summary -        | 2 | only --out can be - for standard output; name a file for --summary
          IN --out - --rejects -          | 2 | only --out can be - for standard output; name a file for --rejects
          IN --out OUT --threads 0        | 2 | --threads counts threads; write 1 or more
          IN --out OUT --form ful         | 2 | "ful" is no word for --form; did you mean full?
          """)
  void wrong_use_is_told_before_anything_is_written(String call, int code, String message)
      throws IOException {
    String[] args =
        ("batch "
                + call.replace("IN", WEEK.toString())
                    .replace("OUT", folder.resolve("out.jsonl").toString()))
            .split(" ");

    CommandLineRun run = CommandLineRun.of(args);

    assertThat(run.exitCode()).isEqualTo(code);
    assertThat(run.err()).contains(message).hasLineCount(1);
    assertThat(run.out()).isEmpty();
    assertThat(names()).isEmpty();
  }

  @Test
  void an_input_with_the_name_of_an_unfinished_output_is_refused_and_kept() throws IOException {
    Path input = Files.copy(WEEK, folder.resolve("out.jsonl.part"));

    CommandLineRun run = batch(input, "out.jsonl");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err())
        .contains("is named twice, as the jobs and as a file of the unfinished run");
    assertThat(input).hasSameBinaryContentAs(WEEK);
  }

  @ParameterizedTest
  @ValueSource(strings = {"other.jsonl", "-"})
  void rejects_of_an_unfinished_run_are_not_cut_off_by_another(String out) throws IOException {
    Path input = unfinished();
    Path rejected = folder.resolve("out.jsonl.rejects.jsonl");
    String other = out.equals("-") ? out : folder.resolve(out).toString();

    CommandLineRun run =
        CommandLineRun.of(
            "batch", WEEK.toString(), "--out", other, "--rejects", rejected.toString());

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err())
        .contains("out.jsonl.rejects.jsonl.part holds the rejects of an unfinished run");
    assertThat(run.out()).isEmpty();
    assertThat(names()).doesNotContain("other.jsonl.part");
    CommandLineRun after = batch(input, "out.jsonl");
    assertThat(after.out()).startsWith("220 jobs decided");
    assertThat(rejected).content().hasLineCount(20);
  }

  @Test
  void decisions_in_a_pipe_keep_their_rejects_where_the_input_breaks_off() throws IOException {
    byte[] whole = packedWeeks(20);
    Path input = folder.resolve("weeks.jsonl.gz");
    Files.write(input, Arrays.copyOf(whole, whole.length * 3 / 4));

    CommandLineRun run =
        CommandLineRun.of("batch", input.toString(), "--out", "-", "--rejects", rejects());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(tree(Files.readAllLines(Path.of(rejects())).get(0)).path("line").asInt())
        .isEqualTo(BAD_LINE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"--out", "--rejects", "--summary", "--chart"})
  void a_link_keeps_its_place_and_its_target(String option) throws IOException {
    Path target = Files.writeString(folder.resolve("target"), "precious");
    Path link = Files.createSymbolicLink(folder.resolve("link"), target);
    String out = option.equals("--out") ? "link" : "out.jsonl";

    CommandLineRun run =
        option.equals("--out") ? batch(WEEK, out) : batch(WEEK, out, option, link.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.err()).contains("link is a link; name the file it leads to");
    assertThat(link).isSymbolicLink();
    assertThat(target).hasContent("precious");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--out", "--summary"})
  void a_linked_folder_hides_no_name_that_stands_twice(String option) throws IOException {
    Path jobs = Files.copy(WEEK, Files.createDirectory(folder.resolve("d")).resolve("jobs"));
    Path other =
        Files.createSymbolicLink(folder.resolve("linked"), folder.resolve("d")).resolve("jobs");

    CommandLineRun run =
        option.equals("--out")
            ? batch(jobs, "linked/jobs")
            : batch(jobs, "out.jsonl", option, other.toString());

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("is named twice, as the jobs and as " + option);
    assertThat(jobs).hasSameBinaryContentAs(WEEK);
  }

  @ParameterizedTest
  @ValueSource(strings = {"out.jsonl", "out.jsonl.rejects.jsonl"})
  void a_finished_run_whose_summary_failed_wants_its_files_as_it_left_them(String gone)
      throws IOException {
    Path summary = folder.resolve("summary");
    Files.createDirectories(folder.resolve("summary.part").resolve("in the way"));
    CommandLineRun failed = batch(WEEK, "out.jsonl", "--summary", summary.toString());
    Files.move(folder.resolve(gone), folder.resolve("elsewhere"));

    CommandLineRun without = batch(WEEK, "out.jsonl");
    Files.move(folder.resolve("elsewhere"), folder.resolve(gone));
    CommandLineRun with = batch(WEEK, "out.jsonl");

    assertThat(failed.exitCode()).isEqualTo(4);
    assertThat(failed.err()).contains("summary").doesNotContain("out.jsonl cannot");
    assertThat(without.exitCode()).isEqualTo(2);
    assertThat(without.err()).contains("its files are not as it left them");
    assertThat(with.exitCode()).isEqualTo(3);
    assertThat(with.out()).startsWith("11 jobs decided");
  }

  @Test
  void damaged_packed_input_promises_nothing_it_cannot_keep() throws IOException {
    byte[] whole = packedWeeks(20);
    Path input = folder.resolve("weeks.jsonl.gz");
    byte[] damaged = whole.clone();
    Arrays.fill(damaged, whole.length * 3 / 4, whole.length * 3 / 4 + 40, (byte) 0xFF);
    Files.write(input, damaged);

    CommandLineRun run = batch(input, "out.jsonl");
    Files.write(input, whole);
    CommandLineRun again = batch(input, "out.jsonl", "--again");

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.err()).contains("is damaged").contains("start afresh with --again");
    assertThat(again.out()).startsWith("220 jobs decided");
  }

  @Test
  void input_packed_by_its_name_only_is_told() throws IOException {
    Path input = Files.copy(WEEK, folder.resolve("week.gz"));

    CommandLineRun run = batch(input, "out.jsonl");

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.err()).contains("week.gz: is no packed file (gzip), or is damaged");
    assertThat(names()).containsExactly("week.gz");
  }

  private CommandLineRun batch(Path input, String out, String... options) {
    List<String> args =
        new ArrayList<>(
            List.of("batch", input.toString(), "--out", folder.resolve(out).toString()));
    args.addAll(List.of(options));
    return CommandLineRun.of(args.toArray(String[]::new));
  }

  /** Leaves an unfinished run behind, and gives its input as it should have been. */
  private Path unfinished() throws IOException {
    byte[] whole = packedWeeks(20);
    Path input = folder.resolve("weeks.jsonl.gz");
    Files.write(input, Arrays.copyOf(whole, whole.length * 3 / 4));
    assertThat(batch(input, "out.jsonl").exitCode()).isEqualTo(4);
    Files.write(input, whole);
    return input;
  }

  private byte[] packedWeeks(int weeks) throws IOException {
    Path packed = folder.resolve("weeks");
    try (var out = new GZIPOutputStream(Files.newOutputStream(packed))) {
      for (int week = 0; week < weeks; week++) {
        Files.copy(WEEK, out);
      }
    }
    byte[] bytes = Files.readAllBytes(packed);
    Files.delete(packed);
    return bytes;
  }

  private Path goodWeek() throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(WEEK));
    lines.remove(BAD_LINE - 1);
    return Files.write(folder.resolve("good-week.jsonl"), lines);
  }

  private String rejects() {
    return folder.resolve("rejects.jsonl").toString();
  }

  private List<String> names() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static JsonNode tree(String json) {
    try {
      return MAPPER.readTree(json);
    } catch (IOException e) {
      throw new IllegalArgumentException(e);
    }
  }

  /** A pipe whose reader has gone. */
  private static final class Gone extends Writer {

    @Override
    public void write(char[] characters, int from, int length) throws IOException {
      throw new IOException("Broken pipe");
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }
}
