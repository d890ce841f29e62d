package org.brakerules.harness.batch;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.brakerules.harness.batch.Disk.OpenFile;

/**
 * The files of a run that may be killed at any moment. What is behind the length that the state
 * tells was written by nobody who came back to say so, and is cut off when the run goes on.
 */
final class BatchFiles implements BatchOutput, Closeable {

  private final Disk disk;
  private final Places places;
  private final Settings settings;
  private final Packing packing;
  private final Duration pause;
  private final StateFile state;
  private final Tally tally = new Tally();

  private Optional<OpenFile> decided = Optional.empty();
  private Optional<OpenFile> rejected = Optional.empty();
  private long decidedBytes;
  private long rejectedBytes;
  private InputMark mark = new InputMark(0, "");
  private boolean finished;
  private long nextCommit = System.nanoTime();

  /**
   * Names the files.
   *
   * @param pause how long to wait from one commit to the next; the first chunk is committed at
   *     once, so that even a run that is killed soon comes further
   */
  BatchFiles(Disk disk, Places places, Settings settings, Packing packing, Duration pause) {
    this.disk = disk;
    this.places = places;
    this.settings = settings;
    this.packing = packing;
    this.pause = pause;
    this.state = new StateFile(disk, places.state());
  }

  /**
   * Opens the files and goes on where an unfinished run stopped, or starts.
   *
   * @param input the input from its beginning; what was decided is passed over
   * @param heading the line before all others; empty if there is none
   * @param again whether to start whatever is there
   * @throws org.brakerules.harness.UsageMistake if an unfinished run is not the same
   */
  void open(LineChunks input, String heading, boolean again) throws IOException {
    if (!again && state.exists() && !disk.exists(places.decidedPart())) {
      new Resumption(state, state.read()).refuseMissing();
      resume(state.read(), input);
      return;
    }
    decided = Optional.of(disk.open(places.decidedPart()));
    if (again) {
      state.delete();
    }
    if (state.exists()) {
      resume(state.read(), input);
    } else {
      start(input, heading);
    }
  }

  private void start(LineChunks input, String heading) throws FileSystemException {
    rejected = Optional.of(disk.open(places.rejectedPart()));
    cut();
    mark = input.mark();
    decidedBytes +=
        append(decided, packing.decided().pack(heading.getBytes(StandardCharsets.UTF_8)));
    commit();
  }

  private void resume(BatchState before, LineChunks input) throws IOException {
    Resumption resumption = new Resumption(state, before);
    resumption.refuseOther(settings);
    resumption.refuseOther(input);
    tally.add(before.tally());
    mark = before.input();
    decidedBytes = before.decidedBytes();
    rejectedBytes = before.rejectedBytes();
    finished = before.finished();
    if (finished) {
      resumption.refuseTaken(
          decided.isPresent() ? size(decided) : written(places.decided()),
          written(disk.exists(places.rejectedPart()) ? places.rejectedPart() : places.rejected()));
    } else {
      rejected = Optional.of(disk.open(places.rejectedPart()));
      resumption.refuseShort(size(decided), size(rejected));
      cut();
    }
  }

  /** The size of a finished file; -1 if it is not there. */
  private long written(Path finished) throws FileSystemException {
    if (!disk.exists(finished)) {
      return -1;
    }
    try (OpenFile file = disk.open(finished)) {
      return file.size();
    }
  }

  private void cut() throws FileSystemException {
    decided.orElseThrow().cutTo(decidedBytes);
    rejected.orElseThrow().cutTo(rejectedBytes);
  }

  /** What was decided so far, by this run and those it goes on from. */
  Tally tally() {
    return tally;
  }

  /** How many lines were done when this run began. */
  long linesBefore() {
    return mark.lines();
  }

  @Override
  public void append(ChunkResult result) throws FileSystemException {
    decidedBytes += append(decided, result.decided());
    rejectedBytes += append(rejected, result.rejected());
    tally.add(result.tally());
    mark = result.after();
    if (System.nanoTime() - nextCommit >= 0) {
      commit();
      nextCommit = System.nanoTime() + pause.toNanos();
    }
  }

  /** Makes sure that what was appended outlives whatever comes. */
  void commit() throws FileSystemException {
    if (rejected.isPresent()) {
      decided.orElseThrow().sync();
      rejected.get().sync();
      state.write(new BatchState(settings, mark, decidedBytes, rejectedBytes, finished, tally));
    }
  }

  /** The input is at its end: puts both files in their places. */
  void finish() throws FileSystemException {
    if (!finished) {
      fillIfEmpty();
      finished = true;
      commit();
    }
    for (OpenFile file : rejected.stream().toList()) {
      file.close();
    }
    take(places.rejectedPart(), places.rejected());
    take(places.decidedPart(), places.decided());
  }

  /** The summary is written as well, so nothing is left to go on with. */
  void forget() throws FileSystemException {
    state.delete();
  }

  private void fillIfEmpty() throws FileSystemException {
    if (decidedBytes == 0) {
      decidedBytes += append(decided, packing.decided().nothing());
    }
    if (rejectedBytes == 0) {
      rejectedBytes += append(rejected, packing.rejected().nothing());
    }
  }

  private void take(Path part, Path place) throws FileSystemException {
    if (disk.exists(part)) {
      disk.replace(part, place);
    }
  }

  private static int append(Optional<OpenFile> file, byte[] bytes) throws FileSystemException {
    if (bytes.length > 0) {
      file.orElseThrow().append(bytes);
    }
    return bytes.length;
  }

  private static long size(Optional<OpenFile> file) throws FileSystemException {
    return file.orElseThrow().size();
  }

  @Override
  public void close() throws FileSystemException {
    for (OpenFile file : rejected.stream().toList()) {
      file.close();
    }
    for (OpenFile file : decided.stream().toList()) {
      file.close();
    }
  }
}
