package org.brakerules.harness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LineChunksTest {

  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource({
    "'', ''",
    "'\n', '1:'",
    "'a', '1:a'",
    "'a\n', '1:a'",
    "'a\nb', '1:a 2:b'",
    "'a\n\nb\n', '1:a 2: 3:b'",
    "'a\r\nb\r\n', '1:a\r 2:b\r'",
    "'Süd\n', '1:Süd'"
  })
  void lines_are_what_stands_between_line_feeds(String text, String lines) throws IOException {
    assertThat(String.join(" ", numbered(Jobs.chunks(text)))).isEqualTo(lines);
  }

  @Test
  void a_chunk_has_thirty_two_lines_at_most() throws IOException {
    LineChunks chunks = Jobs.chunks(Jobs.lines(33));

    assertThat(sizes(chunks)).containsExactly(32, 1);
  }

  @Test
  void a_chunk_takes_no_more_once_it_has_a_quarter_of_a_megabyte() throws IOException {
    String half = "x".repeat(LineChunks.ENOUGH_BYTES / 2) + "\n";

    assertThat(sizes(Jobs.chunks(half.repeat(5)))).containsExactly(2, 2, 1);
  }

  @Test
  void chunks_are_the_same_however_the_bytes_arrive() throws IOException {
    String text = Jobs.lines(200);

    LineChunks inDrops = new LineChunks(new Input("-", new Drops(text)));

    assertThat(marks(inDrops)).isEqualTo(marks(Jobs.chunks(text)));
  }

  @Test
  void a_line_longer_than_any_job_is_cut_and_its_length_told() throws IOException {
    int length = LineChunks.MOST_KEPT + 7;
    Chunk chunk = Jobs.chunks("x".repeat(length) + "\nnext\n").next().orElseThrow();

    Line line = chunk.lines().get(0);

    assertThat(line.bytes()).hasSize(LineChunks.MOST_KEPT);
    assertThat(line.length()).isEqualTo(length);
    assertThat(line.isCut()).isTrue();
  }

  @Test
  void what_was_read_before_is_passed_over() throws IOException {
    String text = Jobs.lines(100);
    LineChunks first = Jobs.chunks(text);
    first.next();
    InputMark mark = first.next().orElseThrow().after();
    LineChunks second = Jobs.chunks(text);

    assertThat(second.skipTo(mark)).isTrue();
    assertThat(second.next().orElseThrow().lines().get(0).number()).isEqualTo(65);
  }

  @Test
  void an_input_that_begins_otherwise_is_not_gone_on_with() throws IOException {
    LineChunks first = Jobs.chunks(Jobs.lines(100));
    InputMark mark = first.next().orElseThrow().after();

    assertThat(Jobs.chunks(Jobs.lines(100).replace("N 3\"", "N 4\"")).skipTo(mark)).isFalse();
    assertThat(Jobs.chunks(Jobs.lines(31)).skipTo(mark)).isFalse();
    assertThat(Jobs.chunks(Jobs.lines(32) + "what comes later").skipTo(mark)).isTrue();
  }

  @Test
  void a_packed_input_of_several_pieces_is_unpacked_even_from_a_slow_pipe() throws IOException {
    byte[] pieces = joined(packed("a\n"), packed("b\n"), packed("c\n"));

    LineChunks chunks = new LineChunks(new Input("-", new Drops(pieces)));

    assertThat(numbered(chunks)).containsExactly("1:a", "2:b", "3:c");
  }

  @Test
  void a_packed_input_cut_off_says_so_after_its_last_whole_line() throws IOException {
    byte[] whole = packed(Jobs.lines(2000));
    byte[] half = Arrays.copyOf(whole, whole.length / 2);
    LineChunks chunks = new LineChunks(new Input("jobs.gz", new ByteArrayInputStream(half)));

    assertThatThrownBy(() -> numbered(chunks))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("ends in the middle of packed data");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 9, 10, 17})
  void a_packed_input_cut_off_at_the_beginning_of_a_piece_says_so(int bytes) throws IOException {
    byte[] cut = joined(packed("a\n"), Arrays.copyOf(packed("b\n"), bytes));

    LineChunks chunks = new LineChunks(new Input("jobs.gz", new ByteArrayInputStream(cut)));

    assertThatThrownBy(() -> numbered(chunks)).isInstanceOf(UnreadableInputException.class);
  }

  @Test
  void lines_behind_packed_data_that_are_not_packed_are_not_lost_without_a_word()
      throws IOException {
    byte[] mixed = joined(packed("a\n"), "b\nc\n".getBytes(StandardCharsets.UTF_8));

    LineChunks chunks = new LineChunks(new Input("jobs.gz", new ByteArrayInputStream(mixed)));

    assertThatThrownBy(() -> numbered(chunks))
        .hasMessageContaining("what follows its last whole piece is not packed");
  }

  @Test
  void an_empty_piece_is_no_trouble() throws IOException {
    byte[] pieces = joined(packed(""), packed("a\n"), packed(""));

    LineChunks chunks = new LineChunks(new Input("jobs.gz", new ByteArrayInputStream(pieces)));

    assertThat(numbered(chunks)).containsExactly("1:a");
  }

  @Test
  void a_name_that_promises_packed_data_is_taken_at_its_word() {
    InputStream plain = new ByteArrayInputStream("{}\n".getBytes(StandardCharsets.UTF_8));

    assertThatThrownBy(() -> new Input("jobs.jsonl.gz", plain))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("is no packed file");
  }

  static byte[] packed(String text) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return packed.toByteArray();
  }

  private static byte[] joined(byte[]... pieces) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    Arrays.stream(pieces).forEach(all::writeBytes);
    return all.toByteArray();
  }

  private static List<String> numbered(LineChunks chunks) throws IOException {
    List<String> lines = new ArrayList<>();
    for (Chunk chunk : all(chunks)) {
      chunk
          .lines()
          .forEach(
              line ->
                  lines.add(
                      line.number() + ":" + new String(line.bytes(), StandardCharsets.UTF_8)));
    }
    return lines;
  }

  private static List<Integer> sizes(LineChunks chunks) throws IOException {
    return all(chunks).stream().map(chunk -> chunk.lines().size()).toList();
  }

  private static List<InputMark> marks(LineChunks chunks) throws IOException {
    return all(chunks).stream().map(Chunk::after).toList();
  }

  private static List<Chunk> all(LineChunks chunks) throws IOException {
    List<Chunk> all = new ArrayList<>();
    for (Optional<Chunk> next = chunks.next(); next.isPresent(); next = chunks.next()) {
      all.add(next.get());
    }
    return all;
  }

  /** A pipe that gives one byte at a time and never knows whether more will come. */
  private static final class Drops extends InputStream {

    private final InputStream bytes;

    Drops(String text) {
      this(text.getBytes(StandardCharsets.UTF_8));
    }

    Drops(byte[] bytes) {
      this.bytes = new ByteArrayInputStream(bytes);
    }

    @Override
    public int read() throws IOException {
      return bytes.read();
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
      return bytes.read(buffer, offset, Math.min(length, 1));
    }
  }
}
