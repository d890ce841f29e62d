package org.brakerules.harness;

import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.brakerules.finalcheck.RecordRefusedException;
import org.brakerules.model.assembly.AssemblyRecord;
import org.brakerules.model.json.AssemblyRecordReader;
import org.brakerules.model.json.InvalidJobException;
import org.brakerules.model.json.Problem;

/**
 * A file with a record of finished work, as named on the command line.
 *
 * @param argument the path
 */
record RecordFile(String argument) {

  /**
   * Reads the record and answers it. What is wrong with it is told in a line each.
   *
   * @param work answers a record
   */
  ExitCode answer(Terminal terminal, Function<AssemblyRecord, ExitCode> work) {
    try {
      return work.apply(read());
    } catch (InvalidJobException invalid) {
      return refuse(terminal, invalid.problems().stream().map(Problem::message).toList());
    } catch (RecordRefusedException refused) {
      return refuse(terminal, refused.problems());
    } catch (UnreadableFileException unreadable) {
      terminal.complain(argument + ": " + unreadable.getMessage());
      return ExitCode.NO_ACCESS;
    }
  }

  private ExitCode refuse(Terminal terminal, List<String> problems) {
    problems.forEach(problem -> terminal.complain(argument + ": " + problem));
    return ExitCode.INVALID_INPUT;
  }

  private AssemblyRecord read() throws UnreadableFileException {
    try {
      return AssemblyRecordReader.read(JobFile.existing(argument, "a file with a record"));
    } catch (UncheckedIOException failure) {
      throw new UnreadableFileException(JobFile.reason(Objects.requireNonNull(failure.getCause())));
    }
  }
}
