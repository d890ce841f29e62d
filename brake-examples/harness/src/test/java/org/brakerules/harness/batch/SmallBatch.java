package org.brakerules.harness.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.brakerules.model.decision.RuleBaseVersion;

/**
 * A batch of small jobs that commits after every chunk.
 *
 * @param folder where its files are
 * @param ending {@code .jsonl} or {@code .jsonl.gz}
 * @param lines the input
 */
record SmallBatch(Path folder, String ending, String lines) {

  private static final RuleBaseVersion RULES = new RuleBaseVersion("0.0.1", "00ff");

  Path decided() {
    return folder.resolve("decided" + ending);
  }

  Path rejected() {
    return folder.resolve("rejected" + ending);
  }

  Places places() {
    return new Places(decided(), rejected());
  }

  /** Starts it or goes on with it, to its end. */
  Tally run(Disk disk) throws IOException {
    return run(disk, Progress.unseen(), Duration.ZERO);
  }

  Tally run(Disk disk, Progress progress, Duration pause) throws IOException {
    return run(disk, progress, new Settings("compact", rejected().toString(), RULES), pause, false);
  }

  Tally run(Disk disk, Progress progress, Settings settings, Duration pause, boolean again)
      throws IOException {
    Packing packing = Packing.of(places());
    Form form = new ReferenceForm();
    try (BatchFiles files = new BatchFiles(disk, places(), settings, packing, pause)) {
      LineChunks chunks = Jobs.chunks(lines);
      files.open(chunks, form.heading(), again);
      Batch.run(chunks, form, packing, files, progress, 2);
      files.finish();
      files.forget();
      return files.tally();
    }
  }

  /** Every file of the folder with what is in it. */
  Map<String, byte[]> files() throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path file : all.toList()) {
        files.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }
}
