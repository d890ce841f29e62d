package org.brakerules.harness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.brakerules.model.job.BrakeJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BatchTest {

  private final ByteArrayOutputStream decided = new ByteArrayOutputStream();
  private final ByteArrayOutputStream rejected = new ByteArrayOutputStream();
  private final StreamOutput output = new StreamOutput(decided, rejected);

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 16})
  void decisions_come_in_the_order_of_the_jobs_whatever_the_threads(int threads)
      throws IOException {
    run(Jobs.chunks(Jobs.lines(2000)), new ReferenceForm(), threads);

    assertThat(text(decided)).isEqualTo(inOrder(2000));
  }

  @Test
  void a_first_line_that_takes_longest_still_comes_first() throws IOException {
    HeldUp form = new HeldUp(1, 3 * LineChunks.MOST_LINES);

    run(Jobs.chunks(Jobs.lines(2000)), form, 4);

    assertThat(text(decided)).isEqualTo(inOrder(2000));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 3, 8})
  void no_more_lines_are_under_way_than_the_window_holds_however_long_the_input_is(int threads)
      throws IOException {
    Counting counting = new Counting(Jobs.chunks(Jobs.lines(20_000)));

    Batch.run(counting, new ReferenceForm(), Packing.NONE, counting, Progress.unseen(), threads);

    assertThat(counting.written).isEqualTo(20_000);
    assertThat(counting.mostUnderWay)
        .isLessThanOrEqualTo((long) Batch.mostChunks(threads) * LineChunks.MOST_LINES);
  }

  @Test
  void large_lines_under_way_are_limited_by_their_size() throws IOException {
    String large = "x".repeat(4_000_000) + "\n";
    Counting counting = new Counting(Jobs.chunks(large.repeat(12)));

    Batch.run(counting, new ReferenceForm(), Packing.NONE, counting, Progress.unseen(), 8);

    assertThat(counting.written).isEqualTo(12);
    assertThat(counting.mostUnderWay).isLessThanOrEqualTo(5);
  }

  @Test
  void what_was_read_before_the_input_broke_off_is_decided() throws IOException {
    byte[] whole = LineChunksTest.packed(Jobs.lines(20_000));
    byte[] half = Arrays.copyOf(whole, whole.length / 2);
    LineChunks chunks = new LineChunks(new Input("-", new ByteArrayInputStream(half)));

    assertThatThrownBy(() -> run(chunks, new ReferenceForm(), 2))
        .isInstanceOf(UnreadableInputException.class);

    assertThat(output.tally().count(Tally.Count.JOBS)).isGreaterThan(1000);
    assertThat(inOrder(20_000)).startsWith(text(decided));
  }

  @Test
  void a_mistake_of_this_program_keeps_one_line_back_and_no_other() throws IOException {
    Form form =
        new Form() {
          @Override
          public String name() {
            return "half";
          }

          @Override
          public String heading() {
            return "";
          }

          @Override
          public CompactDecision write(long line, BrakeJob job, OutputStream out)
              throws IOException {
            out.write("half a ".getBytes(StandardCharsets.UTF_8));
            if (line == 2) {
              throw new IllegalStateException("a rule went astray");
            }
            out.write(("line " + line + "\n").getBytes(StandardCharsets.UTF_8));
            return ReferenceForm.decision(job);
          }
        };

    run(Jobs.chunks(Jobs.lines(3)), form, 2);

    assertThat(text(decided)).isEqualTo("half a line 1\nhalf a line 3\n");
    assertThat(text(rejected))
        .contains("\"line\":2,\"kind\":\"failure\"", "a rule went astray")
        .hasLineCount(1);
  }

  private void run(Chunks chunks, Form form, int threads) throws IOException {
    Batch.run(chunks, form, Packing.NONE, output, Progress.unseen(), threads);
  }

  private static String inOrder(int count) {
    return IntStream.rangeClosed(1, count)
        .filter(number -> number % 7 != 0)
        .mapToObj(number -> number + " N " + number + "\n")
        .collect(Collectors.joining());
  }

  private static String text(ByteArrayOutputStream bytes) {
    return bytes.toString(StandardCharsets.UTF_8);
  }

  /** One line waits until so many others are decided. */
  private static final class HeldUp implements Form {

    private final long line;
    private final CountDownLatch others;
    private final Form form = new ReferenceForm();

    HeldUp(long line, int others) {
      this.line = line;
      this.others = new CountDownLatch(others);
    }

    @Override
    public String name() {
      return form.name();
    }

    @Override
    public String heading() {
      return "";
    }

    @Override
    public CompactDecision write(long number, BrakeJob job, OutputStream out) throws IOException {
      if (number == line) {
        await();
      } else {
        others.countDown();
      }
      return form.write(number, job, out);
    }

    private void await() {
      try {
        others.await();
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  /** Counts lines that were handed out and have not come back. */
  private static final class Counting implements Chunks, BatchOutput {

    private final Chunks chunks;
    private long read;
    private long written;
    private long mostUnderWay;

    Counting(Chunks chunks) {
      this.chunks = chunks;
    }

    @Override
    public Optional<Chunk> next() throws IOException {
      Optional<Chunk> next = chunks.next();
      read += next.map(chunk -> chunk.lines().size()).orElse(0);
      mostUnderWay = Math.max(mostUnderWay, read - written);
      return next;
    }

    @Override
    public void append(ChunkResult result) {
      written = result.after().lines();
    }
  }
}
