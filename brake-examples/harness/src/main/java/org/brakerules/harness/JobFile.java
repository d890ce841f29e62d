package org.brakerules.harness;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Objects;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.JobReader;

/**
 * A file with a job, as named on the command line.
 *
 * @param argument the path, or - for standard input
 */
record JobFile(String argument) {

  static final String STANDARD_INPUT = "-";

  /** The name in messages. */
  String name() {
    return argument.equals(STANDARD_INPUT) ? "standard input" : argument;
  }

  /**
   * Reads the job.
   *
   * @throws UnreadableFileException if there is no such file, or it cannot be read
   * @throws org.brakerules.model.json.InvalidJobException if it holds no valid job
   */
  BrakeJob read(InputStream standardInput) throws UnreadableFileException {
    try {
      return argument.equals(STANDARD_INPUT) ? JobReader.read(standardInput) : read(path());
    } catch (UncheckedIOException failure) {
      throw new UnreadableFileException(reason(Objects.requireNonNull(failure.getCause())));
    }
  }

  private static BrakeJob read(Path path) throws UnreadableFileException {
    if (Files.isDirectory(path)) {
      throw new UnreadableFileException("is a directory; name a file with a job");
    }
    return JobReader.read(path);
  }

  private Path path() throws UnreadableFileException {
    try {
      return Path.of(argument);
    } catch (InvalidPathException impossible) {
      throw new UnreadableFileException("is no file name on this machine");
    }
  }

  private static String reason(IOException failure) {
    if (failure instanceof NoSuchFileException) {
      return "no such file";
    }
    if (failure instanceof AccessDeniedException) {
      return "permission to read it is denied";
    }
    return "cannot be read: " + failure.getMessage();
  }
}
