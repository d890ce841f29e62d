package org.brakerules.harness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.harness.reference.ReferenceBook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes the reference pages of the rule base. */
@Command(
    name = "reference",
    description = "Writes the reference pages of the rule base, in Markdown, to a folder.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the pages are written",
      "2:wrong usage",
      "4:the folder cannot be written",
      "70:a mistake in this program"
    })
final class ReferenceCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "DIR", description = "The folder; it is made if it is not there.")
  private Path folder = Path.of("");

  ReferenceCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    SortedMap<String, String> pages = ReferenceBook.pages(BrakeRules.standard());
    try {
      for (Map.Entry<String, String> page : pages.entrySet()) {
        write(folder.resolve(page.getKey()), page.getValue());
      }
    } catch (IOException e) {
      terminal.complain("brake reference: " + folder + " cannot be written: " + e);
      return ExitCode.NO_ACCESS.number();
    }
    terminal.out().println(pages.size() + " pages written to " + folder);
    return ExitCode.DONE.number();
  }

  private static void write(Path file, String text) throws IOException {
    Path parent = file.getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    Files.writeString(file, text);
  }
}
