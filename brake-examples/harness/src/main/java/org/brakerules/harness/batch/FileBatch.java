package org.brakerules.harness.batch;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.time.Duration;
import org.brakerules.BrakeRules;

/**
 * A batch from an input into files. It may be killed at any moment: the same batch, opened once
 * more, goes on where it stopped, and its files come out the same to the byte.
 */
public final class FileBatch implements Closeable {

  /** Work that is lost at most if a run is killed. */
  private static final Duration PAUSE = Duration.ofSeconds(1);

  private final BrakeRules rules;
  private final Form form;
  private final Packing packing;
  private final LineChunks chunks;
  private final BatchFiles files;

  private FileBatch(
      BrakeRules rules, Form form, Packing packing, LineChunks chunks, BatchFiles files) {
    this.rules = rules;
    this.form = form;
    this.packing = packing;
    this.chunks = chunks;
    this.files = files;
  }

  /**
   * Opens a batch, or goes on with one that was stopped.
   *
   * @param rules whose names the decisions use
   * @param form who decides, and how a line is written
   * @param input the name of the input, and the input from its beginning
   * @param places where the decisions and the rejects go
   * @param again whether to start afresh where one was stopped
   * @throws org.brakerules.harness.UsageMistake if the one that was stopped is not the same, or
   *     another keeps its rejects there
   * @throws UnreadableInputException if the input cannot be read
   * @throws FileSystemException if a file cannot be written
   */
  public static FileBatch open(
      BrakeRules rules, Form form, NamedInput input, Places places, boolean again)
      throws IOException {
    if (!again && !places.isUnfinished()) { // a run leaves no reject without a state
      Places.refuseRejectsOfAnother(places.rejectedPart());
    }
    Packing packing = Packing.of(places);
    String rejects = places.rejected().toAbsolutePath().normalize().toString();
    Settings settings = new Settings(form.name(), rejects, rules.version());
    BatchFiles files = new BatchFiles(new RealDisk(), places, settings, packing, PAUSE);
    LineChunks chunks = new LineChunks(new Input(input.name(), input.stream()));
    try {
      files.open(chunks, form.heading(), again);
    } catch (IOException | RuntimeException failure) {
      files.close();
      throw failure;
    }
    return new FileBatch(rules, form, packing, chunks, files);
  }

  /** How many lines a run before this one has done. */
  public long linesBefore() {
    return files.linesBefore();
  }

  /**
   * Decides what is left and puts the files in their places.
   *
   * @throws UnreadableInputException if the input breaks off; the whole chunks read of it are
   *     decided
   * @throws FileSystemException if a file cannot be written
   */
  public void run(int threads, Progress progress) throws IOException {
    try {
      Batch.run(chunks, form, packing, files, progress, threads);
    } catch (UnreadableInputException brokenOff) {
      files.commit();
      throw brokenOff;
    }
    files.finish();
  }

  /** What was decided so far. */
  public Outcome outcome() {
    return new Outcome(rules, files.tally());
  }

  /** Everything is done, the summary too: nothing is left to go on with. */
  public void forget() throws FileSystemException {
    files.forget();
  }

  @Override
  public void close() throws FileSystemException {
    files.close();
  }
}
