package org.brakerules.harness;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.harness.parts.PartsReport;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.InvalidShelfException;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.parts.KitCover;
import org.brakerules.parts.PartsCsv;
import org.brakerules.parts.PartsList;
import org.brakerules.parts.PartsListWriter;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the parts list of a job. */
@Command(
    name = "parts",
    description = "Lists what a brake job needs: to order, to keep, to save, to look at.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the list is written",
      "2:wrong usage",
      "3:a file holds no valid job or shelf; every problem is one line on standard error",
      "4:a file cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class PartsCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "A job in JSON; - is standard input.")
  private String file = "";

  @Option(
      names = "--kits",
      paramLabel = "FILE",
      description = "Also choose the kits that cover the list best, from this shelf in JSON.")
  private @Nullable Path kits;

  @ArgGroup private Form form = new Form();

  /** The forms of the list, of which one is printed. */
  private static final class Form {

    @Option(names = "--json", description = "Print the list as JSON.")
    private boolean json;

    @Option(names = "--csv", description = "Print the list as comma-separated values.")
    private boolean csv;
  }

  PartsCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return new JobFile(file).answer(terminal, this::list).number();
  }

  private ExitCode list(BrakeJob job) {
    return kits == null ? print(text(BrakeRules.standard().parts(job))) : withKits(job, kits);
  }

  private ExitCode withKits(BrakeJob job, Path shelfFile) {
    try {
      KitShelf shelf = new ShelfFile(shelfFile).read();
      return print(text(BrakeRules.standard().parts(job, shelf)));
    } catch (InvalidShelfException invalid) {
      invalid
          .problems()
          .forEach(problem -> terminal.complain(shelfFile + ": " + problem.message()));
      return ExitCode.INVALID_INPUT;
    } catch (UnreadableFileException unreadable) {
      terminal.complain(shelfFile + ": " + unreadable.getMessage());
      return ExitCode.NO_ACCESS;
    }
  }

  private String text(PartsList parts) {
    if (form.csv) {
      return PartsCsv.write(parts);
    }
    return form.json ? pretty(PartsListWriter.write(parts)) : PartsReport.of(parts);
  }

  private String text(KitCover cover) {
    if (form.csv) {
      return PartsCsv.write(cover);
    }
    return form.json ? pretty(PartsListWriter.write(cover)) : PartsReport.of(cover);
  }

  private ExitCode print(String text) {
    terminal.out().print(text);
    terminal.out().flush();
    return ExitCode.DONE;
  }

  private static String pretty(String json) {
    try {
      return PrettyJson.of(new ObjectMapper().readTree(json));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }
}
