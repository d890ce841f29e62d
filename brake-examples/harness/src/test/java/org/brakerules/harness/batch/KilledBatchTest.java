package org.brakerules.harness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import org.brakerules.harness.UsageMistake;
import org.brakerules.harness.batch.FailingDisk.Killed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A run is killed at every single call that changes a file, goes on, and is killed again further
 * on. What comes out in the end is held against a run that nobody disturbed.
 */
class KilledBatchTest {

  private static final String LINES = Jobs.lines(150);

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({".jsonl, false", ".jsonl, true", ".jsonl.gz, false", ".jsonl.gz, true"})
  void a_batch_killed_at_any_call_comes_out_as_one_that_was_not(String ending, boolean powerFails)
      throws IOException {
    SmallBatch undisturbed = batch("undisturbed", ending);
    Tally tally = undisturbed.run(new RealDisk());

    long call = 1;
    while (killed(batch("killed at " + call, ending), call, powerFails)) {
      SmallBatch batch = batch("killed at " + call, ending);
      killed(batch, call / 2 + 3, powerFails);
      Tally after = batch.run(FailingDisk.sound());

      assertThat(TallyJson.of(after)).as("killed at %d", call).isEqualTo(TallyJson.of(tally));
      assertThatFiles(batch, undisturbed, "killed at " + call);
      call++;
    }
    assertThat(call).isGreaterThan(50);
  }

  @ParameterizedTest
  @ValueSource(strings = {".jsonl", ".jsonl.gz"})
  void a_batch_killed_again_and_again_comes_out_as_one_that_was_not(String ending)
      throws IOException {
    SmallBatch undisturbed = batch("undisturbed", ending);
    undisturbed.run(new RealDisk());
    SmallBatch batch = batch("killed", ending);

    int kills = 0;
    while (killed(batch, 14 + kills % 5, true)) {
      kills++;
    }

    assertThat(kills).isGreaterThan(3);
    assertThatFiles(batch, undisturbed, "killed " + kills + " times");
  }

  @ParameterizedTest
  @ValueSource(strings = {".jsonl", ".jsonl.gz"})
  void a_full_disk_leaves_nothing_that_looks_finished_and_is_gone_on_with_once_there_is_room(
      String ending) throws IOException {
    SmallBatch undisturbed = batch("undisturbed", ending);
    undisturbed.run(new RealDisk());
    int room = 0;
    while (isFull(batch("room for " + room, ending), room)) {
      SmallBatch batch = batch("room for " + room, ending);
      assertThat(batch.decided()).doesNotExist();
      assertThat(batch.rejected()).doesNotExist();
      batch.run(FailingDisk.sound());
      assertThatFiles(batch, undisturbed, "room for " + room);
      room += 150;
    }
    assertThat(room).isGreaterThan(3000);
  }

  private static boolean isFull(SmallBatch batch, int room) throws IOException {
    try {
      batch.run(FailingDisk.fullAfter(room));
      return false;
    } catch (FileSystemException full) {
      assertThat(full).hasMessageContaining("No space left on device");
      return true;
    }
  }

  @Test
  void packed_output_of_an_unfinished_run_is_whole_up_to_where_its_state_says() throws IOException {
    SmallBatch batch = batch("unfinished", ".jsonl.gz");
    assertThat(killed(batch, 40, false)).isTrue();
    long committed = new StateFile(new RealDisk(), batch.places().state()).read().decidedBytes();
    byte[] part = Files.readAllBytes(batch.places().decidedPart());

    String lines;
    try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(part, 0, (int) committed))) {
      lines = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }

    assertThat(lines).startsWith("number and reference\n1 N 1\n").endsWith("\n");
  }

  @Test
  void a_batch_is_not_gone_on_with_if_its_output_was_changed() throws IOException {
    SmallBatch batch = batch("changed", ".jsonl");
    assertThat(killed(batch, 60, false)).isTrue();
    Files.writeString(batch.places().decidedPart(), "");

    assertThatThrownBy(() -> batch.run(new RealDisk()))
        .isInstanceOf(UsageMistake.class)
        .hasMessageContaining("somebody has changed its files");
  }

  @Test
  void two_runs_do_not_write_the_same_file_at_once() throws IOException {
    SmallBatch batch = batch("twice", ".jsonl");

    try (Disk.OpenFile first = new RealDisk().open(batch.places().decidedPart())) {
      first.append(new byte[] {'x'});

      assertThatThrownBy(() -> batch.run(new RealDisk()))
          .isInstanceOf(FileSystemException.class)
          .hasMessageContaining("another brake batch is writing it");
      assertThat(first.size()).isEqualTo(1);
    }
  }

  private static boolean killed(SmallBatch batch, long call, boolean powerFails)
      throws IOException {
    try {
      batch.run(FailingDisk.killedAt(call, powerFails));
      return false;
    } catch (Killed killed) {
      return true;
    }
  }

  private SmallBatch batch(String name, String ending) throws IOException {
    return new SmallBatch(Files.createDirectories(folder.resolve(name)), ending, LINES);
  }

  private static void assertThatFiles(SmallBatch batch, SmallBatch undisturbed, String when)
      throws IOException {
    Map<String, byte[]> expected = undisturbed.files();
    Map<String, byte[]> found = batch.files();
    assertThat(found.keySet()).as(when).isEqualTo(expected.keySet());
    expected.forEach(
        (name, bytes) -> assertThat(found.get(name)).as(name + ", " + when).isEqualTo(bytes));
  }
}
