package org.brakerules.harness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Java processes that are really killed, at moments nobody chose, until they have done enough. */
class KilledProcessTest {

  private static final int KILLS = 12;
  private static final String LINES = Jobs.lines(20_000);
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();

  private final Random random = new Random(4417);

  @TempDir private Path folder;

  @Test
  void plain_output_of_a_process_killed_12_times_is_that_of_one_left_alone() throws Exception {
    killAndCompare(".jsonl");
  }

  @Test
  void packed_output_of_a_process_killed_12_times_is_that_of_one_left_alone() throws Exception {
    killAndCompare(".jsonl.gz");
  }

  private void killAndCompare(String ending) throws Exception {
    Path jobs = Files.writeString(folder.resolve("jobs.jsonl"), LINES);
    SmallBatch undisturbed = batch("undisturbed", ending);
    Tally tally = undisturbed.run(FailingDisk.sound());
    SmallBatch killed = batch("killed", ending);
    List<Long> reached = new ArrayList<>();

    for (int kill = 0; kill < KILLS; kill++) {
      boolean hasDoneSomething = kill % 5 != 0;
      assertThat(startAndKill(killed, jobs, hasDoneSomething)).as("killed halfway").isTrue();
      reached.add(linesDone(killed));
    }
    Tally after = killed.run(FailingDisk.sound());

    assertThat(reached).isSorted().last().isNotEqualTo(0L);
    assertThat(reached.stream().distinct()).hasSizeGreaterThan(KILLS / 2);
    assertThat(TallyJson.of(after)).isEqualTo(TallyJson.of(tally));
    assertThat(killed.files().keySet()).isEqualTo(undisturbed.files().keySet());
    assertThat(killed.decided()).hasSameBinaryContentAs(undisturbed.decided());
    assertThat(killed.rejected()).hasSameBinaryContentAs(undisturbed.rejected());
  }

  /**
   * Starts a process and kills it.
   *
   * @param hasDoneSomething whether it may first come further than the one before
   * @return whether it was killed before it had finished
   */
  private boolean startAndKill(SmallBatch batch, Path jobs, boolean hasDoneSomething)
      throws Exception {
    long before = linesDone(batch);
    Process process =
        new ProcessBuilder(
                JAVA,
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                SlowBatch.class.getName(),
                batch.folder().toString(),
                batch.ending(),
                jobs.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
      assertThat(out.readLine()).isEqualTo("ready");
      while (hasDoneSomething && linesDone(batch) == before && process.isAlive()) {
        Thread.sleep(2);
      }
      Thread.sleep(random.nextInt(90));
      return process.destroyForcibly().waitFor() != 0;
    }
  }

  private static long linesDone(SmallBatch batch) throws IOException {
    StateFile state = new StateFile(new RealDisk(), batch.places().state());
    return state.exists() ? state.read().input().lines() : 0;
  }

  private SmallBatch batch(String name, String ending) throws IOException {
    return new SmallBatch(Files.createDirectories(folder.resolve(name)), ending, LINES);
  }
}
