package org.brakerules.harness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.harness.sheet.Sheets;
import org.brakerules.model.job.BrakeJob;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a page to work by for each wheel end of a job. */
@Command(
    name = "sheet",
    description =
        "Writes one page of HTML for each wheel end, to work by and to sign: parts, pictures, steps"
            + " and what they rest on. The pages need no network and no script.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every page is written",
      "2:wrong usage",
      "3:the file holds no valid job; every problem is one line on standard error",
      "4:the file cannot be read, or a page cannot be written",
      "70:a mistake in this program"
    })
final class SheetCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "A job in JSON; - is standard input.")
  private String file = "";

  @Option(
      names = "--out",
      paramLabel = "DIR",
      required = true,
      description = "The folder for the pages; it is made if it is not there.")
  private Path folder = Path.of("");

  SheetCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return new JobFile(file).answer(terminal, this::write).number();
  }

  private ExitCode write(BrakeJob job) {
    Map<Path, String> pages = new TreeMap<>();
    Sheets.of(BrakeRules.standard(), job)
        .forEach((name, page) -> pages.put(folder.resolve(name), page));
    Path place = folder;
    try {
      Files.createDirectories(folder);
      for (Map.Entry<Path, String> page : pages.entrySet()) {
        place = page.getKey();
        WholeFile.write(place, page.getValue());
      }
    } catch (IOException failure) {
      terminal.complain(
          "brake sheet: " + new WriteFailure(place, failure).inWords() + "; name another place");
      return ExitCode.NO_ACCESS;
    }
    pages.keySet().forEach(terminal.out()::println);
    terminal.out().flush();
    return ExitCode.DONE;
  }
}
