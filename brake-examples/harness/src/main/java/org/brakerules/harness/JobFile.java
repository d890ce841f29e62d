package org.brakerules.harness;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.brakerules.JobRefusedException;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.InvalidJobException;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.json.Problem;

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
   * Reads the job and answers it. What is wrong with it is told in a line each.
   *
   * @param work answers a job
   */
  ExitCode answer(Terminal terminal, Function<BrakeJob, ExitCode> work) {
    try {
      return work.apply(read(terminal.in()));
    } catch (InvalidJobException invalid) {
      return refuse(terminal, invalid.problems().stream().map(Problem::message).toList());
    } catch (JobRefusedException refused) {
      return refuse(terminal, refused.problems());
    } catch (UnreadableFileException unreadable) {
      terminal.complain(name() + ": " + unreadable.getMessage());
      return ExitCode.NO_ACCESS;
    }
  }

  private ExitCode refuse(Terminal terminal, List<String> problems) {
    problems.forEach(problem -> terminal.complain(name() + ": " + problem));
    return ExitCode.INVALID_INPUT;
  }

  /**
   * Reads the job.
   *
   * @throws UnreadableFileException if there is no such file, or it cannot be read
   * @throws InvalidJobException if it holds no valid job
   */
  BrakeJob read(InputStream standardInput) throws UnreadableFileException {
    try {
      return argument.equals(STANDARD_INPUT)
          ? JobReader.read(standardInput)
          : JobReader.read(existing(argument, "a file with a job"));
    } catch (UncheckedIOException failure) {
      throw new UnreadableFileException(reason(Objects.requireNonNull(failure.getCause())));
    }
  }

  /**
   * The file of an argument.
   *
   * @param wanted what is wanted, for the message
   * @throws UnreadableFileException if it is a directory, or no file name at all
   */
  static Path existing(String argument, String wanted) throws UnreadableFileException {
    try {
      Path path = Path.of(argument);
      if (Files.isDirectory(path)) {
        throw new UnreadableFileException("is a directory; name " + wanted);
      }
      return path;
    } catch (InvalidPathException impossible) {
      throw new UnreadableFileException("is no file name on this machine");
    }
  }

  /** Why a file cannot be read, in words. */
  static String reason(IOException failure) {
    if (failure instanceof NoSuchFileException) {
      return "no such file";
    }
    if (failure instanceof AccessDeniedException) {
      return "permission to read it is denied";
    }
    return "cannot be read: " + failure.getMessage();
  }
}
