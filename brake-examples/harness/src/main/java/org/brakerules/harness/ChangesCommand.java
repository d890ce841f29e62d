package org.brakerules.harness;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.brakerules.harness.changes.Changes;
import org.brakerules.harness.changes.Recording;
import org.brakerules.linter.RuleLinter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Holds a rule base that is being worked on against the last release and the changelog. */
@Command(
    name = "changes",
    description = {
      "Prints what differs from the last release: rules, limits, points, what is law.",
      "Each changed id must stand in the changelog, with the day from which on it holds and who"
          + " sees another verdict."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the changelog says everything",
      "1:the changelog leaves something unsaid, or an id was used again",
      "2:wrong usage",
      "3:the rule base has a mistake; see brake lint",
      "4:a file cannot be read or written",
      "70:a mistake in this program"
    })
final class ChangesCommand implements Callable<Integer> {

  private static final String RULES = "org/brakerules/rules";

  private final Terminal terminal;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "DIR",
      defaultValue = "brake-rules/src/main/resources",
      description = "The folder that holds org/brakerules/rules; ${DEFAULT-VALUE} if left out.")
  private Path resources = Path.of("");

  @Option(
      names = "--docs",
      paramLabel = "DIR",
      defaultValue = "docs",
      description =
          "The folder that holds CHANGELOG.md and releases; ${DEFAULT-VALUE} if left out.")
  private Path docs = Path.of("");

  @Option(
      names = "--record",
      paramLabel = "VERSION",
      description =
          "Put the rule base on record as this release instead, such as 1.2.3: newer than every one"
              + " on record, and the newest section of the changelog, with its day.")
  private Optional<String> version = Optional.empty();

  ChangesCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try {
      return run().number();
    } catch (FileSystemException failure) {
      return complain(failure.getFile() + " cannot be read or written");
    } catch (IOException | UncheckedIOException e) {
      return complain(String.valueOf(e.getMessage()));
    }
  }

  private int complain(String message) {
    terminal.complain("brake changes: " + message);
    return ExitCode.NO_ACCESS.number();
  }

  private ExitCode run() throws IOException {
    if (!Files.isDirectory(resources.resolve(RULES))) {
      throw new IOException(
          "there is no folder %s in %s; name the folder that holds it, such as src/main/resources"
              .formatted(RULES, resources));
    }
    int mistakes = RuleLinter.lint(resources).size();
    if (mistakes > 0) {
      terminal.complain(
          "brake changes: the rule base has mistakes (" + mistakes + "); see brake lint first");
      return ExitCode.INVALID_INPUT;
    }
    return version.isPresent() ? record(version.get()) : compare();
  }

  private ExitCode record(String release) throws IOException {
    Recording recording = Recording.of(release, resources, docs);
    if (!recording.problems().isEmpty()) {
      recording.problems().forEach(terminal::complain);
      terminal.complain("brake changes: " + release + " is not put on record");
      return ExitCode.WORK_LEFT;
    }
    terminal.out().println(release + " is on record: " + recording.write());
    return ExitCode.DONE;
  }

  private ExitCode compare() throws IOException {
    Changes changes = Changes.of(resources, docs);
    changes.report().forEach(terminal.out()::println);
    terminal.out().flush();
    changes.problems().forEach(terminal::complain);
    return changes.problems().isEmpty() ? ExitCode.DONE : ExitCode.WORK_LEFT;
  }
}
