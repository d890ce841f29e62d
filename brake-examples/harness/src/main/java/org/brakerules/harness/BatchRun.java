package org.brakerules.harness;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;
import java.util.zip.ZipException;
import org.brakerules.BrakeRules;
import org.brakerules.harness.batch.FileBatch;
import org.brakerules.harness.batch.NamedInput;
import org.brakerules.harness.batch.Outcome;
import org.brakerules.harness.batch.Places;
import org.brakerules.harness.batch.StreamBatch;
import org.brakerules.harness.batch.UnreadableInputException;

/**
 * One run of a batch, with what is said of it.
 *
 * @param terminal is told how far it is and what it came to
 * @param rules who decides
 * @param form how a decision is written
 * @param threads how many threads decide
 * @param size the size of the input in bytes; 0 if nobody knows
 * @param places where to write
 * @param again whether to start afresh
 */
record BatchRun(
    Terminal terminal,
    BrakeRules rules,
    BatchForm form,
    int threads,
    long size,
    BatchPlaces places,
    boolean again) {

  ExitCode of(NamedInput input) {
    try {
      return places.intoFile() ? intoFile(input) : intoStream(input);
    } catch (UnreadableInputException brokenOff) {
      terminal.complain(
          new JobFile(input.name()).name() + ": " + brokenOff.getMessage() + goOn(brokenOff));
    } catch (FileSystemException failure) {
      Path file = Path.of(Objects.requireNonNullElse(failure.getFile(), places.decided()));
      terminal.complain(new WriteFailure(file, failure).inWords() + goOn("it can be written"));
    } catch (IOException failure) {
      if (!isStandardOutput()) { // of which it is told at the very end
        terminal.complain(places.decided() + " cannot be written (" + failure.getMessage() + ")");
      }
    }
    return ExitCode.NO_ACCESS;
  }

  /**
   * Of damaged data the lines before were perhaps damaged as well, and are compared when mended.
   */
  private String goOn(UnreadableInputException brokenOff) {
    return brokenOff.getCause() instanceof ZipException && isKept()
        ? "; lines before it may be damaged too: once it is mended start afresh with --again"
        : goOn("it is mended");
  }

  /** What was decided before the trouble is not lost. */
  private String goOn(String when) {
    return isKept() ? "; what is decided is kept, the same command goes on once " + when : "";
  }

  private boolean isKept() {
    return places.intoFile() && files().isUnfinished();
  }

  private Places files() {
    return new Places(places.decidedFile(), places.rejected());
  }

  private ExitCode intoFile(NamedInput input) throws IOException {
    try (FileBatch batch = FileBatch.open(rules, form.of(rules), input, files(), again)) {
      if (batch.linesBefore() > 0) {
        terminal.complain(
            "goes on after line " + batch.linesBefore() + ", where an unfinished run stopped");
      }
      BatchProgress progress = BatchProgress.on(terminal, size, batch.linesBefore());
      try {
        batch.run(threads, progress);
      } finally {
        progress.end();
      }
      Outcome outcome = batch.outcome();
      writeSummary(outcome);
      batch.forget();
      terminal.out().print(outcome.text());
      terminal.out().flush();
      return told(outcome);
    }
  }

  private ExitCode intoStream(NamedInput input) throws IOException {
    Path part = WholeFile.beside(places.rejected());
    if (!again) {
      Places.refuseRejectsOfAnother(part);
    }
    try {
      Outcome outcome = intoStream(input, part);
      keepRejects(part);
      writeSummary(outcome);
      terminal.err().print(outcome.text());
      terminal.err().flush();
      return told(outcome);
    } catch (UnreadableInputException brokenOff) {
      keepRejects(part); // of the lines whose decisions are out already
      throw brokenOff;
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private void keepRejects(Path part) throws IOException {
    Files.move(part, places.rejected(), StandardCopyOption.REPLACE_EXISTING);
  }

  private Outcome intoStream(NamedInput input, Path rejects) throws IOException {
    BatchProgress progress = BatchProgress.on(terminal, size, 0);
    try (OutputStream decided = stream();
        OutputStream rejected = Files.newOutputStream(rejects)) {
      return new StreamBatch(rules, form.of(rules), threads)
          .run(input, decided, rejected, progress);
    } finally {
      progress.end();
    }
  }

  private OutputStream stream() throws IOException {
    return isStandardOutput()
        ? new PrintedBytes(terminal.out())
        : Files.newOutputStream(places.decidedFile());
  }

  private boolean isStandardOutput() {
    return places.decided().equals(JobFile.STANDARD_INPUT);
  }

  private void writeSummary(Outcome outcome) throws IOException {
    if (places.summary().isPresent()) {
      WholeFile.write(places.summary().get(), outcome.json());
    }
    if (places.chart().isPresent()) {
      WholeFile.write(places.chart().get(), outcome.chart());
    }
  }

  private ExitCode told(Outcome outcome) {
    if (outcome.rejects() == 0) {
      return ExitCode.DONE;
    }
    terminal.complain(
        Counted.of(outcome.rejects(), "line has no decision", "lines have no decision")
            + "; see "
            + places.rejected());
    return outcome.failures() > 0 ? ExitCode.INTERNAL_FAILURE : ExitCode.INVALID_INPUT;
  }
}
