package org.brakerules.harness;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Starts the command line. */
public final class Main {

  private final Terminal terminal;
  private final BrakeCommand brake = new BrakeCommand();

  private Main(Terminal terminal) {
    this.terminal = terminal;
  }

  private CommandLine commandLine(String... args) {
    CommandLine commandLine = new CommandLine(brake);
    Commands.add(commandLine, terminal, List.of(args));
    return commandLine
        .setOut(terminal.out())
        .setErr(terminal.err())
        .setUsageHelpWidth(100)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(this::wrongUsage)
        .setExecutionExceptionHandler(this::failed);
  }

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] args) {
    System.exit(run(Terminal.ofThisProcess(), args));
  }

  /** Runs one command and gives its exit code. */
  static int run(Terminal terminal, String... args) {
    return new Main(terminal).run(args);
  }

  private int run(String... args) {
    int code = execute(args);
    if (!terminal.isWritten()) {
      terminal.complain("brake: the output was cut off, not everything could be written");
      return Math.max(code, ExitCode.NO_ACCESS.number());
    }
    return code;
  }

  private int execute(String... args) {
    try {
      Optional<DecideCommand> plain = DecideCommand.plain(terminal, args);
      return plain.isPresent() ? plain.get().call() : commandLine(args).execute(args);
    } catch (RuntimeException | LinkageError | OutOfMemoryError mistake) {
      return internalFailure(mistake);
    }
  }

  private int wrongUsage(ParameterException mistake, String[] args) {
    Optional<UsageMistake> choice = OptionWords.mistake(mistake);
    if (choice.isPresent()) {
      return wrongUsage(choice.get().getMessage(), mistake.getCommandLine());
    }
    List<String> near =
        mistake instanceof UnmatchedArgumentException unknown
            ? unknown.getSuggestions()
            : List.of();
    String hint = near.isEmpty() ? "" : "; did you mean " + String.join(" or ", near) + "?";
    return wrongUsage(mistake.getMessage() + hint, mistake.getCommandLine());
  }

  private int wrongUsage(String message, CommandLine command) {
    String name = command.getCommandSpec().qualifiedName();
    terminal.complain(name + ": " + message + " (see " + name + " --help)");
    return ExitCode.WRONG_USAGE.number();
  }

  private int failed(Exception failure, CommandLine command, ParseResult parsed) {
    return failure instanceof UsageMistake mistake
        ? wrongUsage(mistake.getMessage(), command)
        : internalFailure(failure);
  }

  private int internalFailure(Throwable failure) {
    Throwable cause = failure;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    terminal.complain(
        cause instanceof OutOfMemoryError
            ? "brake: the memory that Java was given is used up; give it more, as with java -Xmx512m"
            : "brake: internal failure, a mistake in this program: "
                + cause
                + " (see --stacktrace)");
    if (brake.stackTrace()) {
      failure.printStackTrace(terminal.err());
      terminal.err().flush();
    }
    return ExitCode.INTERNAL_FAILURE.number();
  }
}
