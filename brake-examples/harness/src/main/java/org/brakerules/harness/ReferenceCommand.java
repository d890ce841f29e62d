package org.brakerules.harness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.brakerules.harness.reference.ReferenceBook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the reference of the rule base. */
@Command(
    name = "reference",
    description =
        "Writes the reference of the rule base: pages in Markdown to a folder, or one book in HTML"
            + " to a file.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the reference is written",
      "2:wrong usage",
      "3:the rules, their cases or their pages have mistakes",
      "4:the rules cannot be read, or the folder or file cannot be written",
      "70:a mistake in this program"
    })
final class ReferenceCommand implements Callable<Integer> {

  private enum Format {
    MARKDOWN,
    HTML
  }

  private final Terminal terminal;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "markdown for pages in a folder, html for one file; markdown if left out.")
  private Format format = Format.MARKDOWN;

  @Parameters(
      paramLabel = "DIR|FILE",
      description =
          "The folder for Markdown or the file for HTML; folders are made if they are not there.")
  private Path target = Path.of("");

  @Mixin private RulesOption rules = new RulesOption();

  ReferenceCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (format == Format.HTML && Files.isDirectory(target)) {
      return complain(target + " is a folder; name a file, such as " + target.resolve("book.html"))
          .number();
    }
    if (format == Format.MARKDOWN && Files.isRegularFile(target)) {
      return complain(target + " is a file; name a folder, or ask for --format html").number();
    }
    return rules.ask(terminal, folder -> write(rules.book(folder)));
  }

  private ExitCode write(ReferenceBook book) {
    if (format == Format.HTML) {
      return write(Map.of(target, book.html()), "book");
    }
    Map<Path, String> files = new TreeMap<>();
    book.pages().forEach((name, page) -> files.put(target.resolve(name), page));
    return write(files, Counted.of(files.size(), "page"));
  }

  private ExitCode write(Map<Path, String> files, String what) {
    for (Map.Entry<Path, String> file : files.entrySet()) {
      try {
        write(file.getKey(), file.getValue());
      } catch (IOException failure) {
        return complain(
            new WriteFailure(file.getKey(), failure).inWords() + "; name another place");
      }
    }
    terminal.out().println(what + " written to " + target);
    return ExitCode.DONE;
  }

  private ExitCode complain(String message) {
    terminal.complain("brake reference: " + message);
    return ExitCode.NO_ACCESS;
  }

  private static void write(Path file, String text) throws IOException {
    Path parent = file.getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    Files.writeString(file, text);
  }
}
