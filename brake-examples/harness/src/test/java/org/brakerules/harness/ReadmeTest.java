package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the README shows is what the program does. */
class ReadmeTest {

  private static final Path ROOT = Path.of("../..");
  private static final Path FIRST_JOB = ROOT.resolve("brake-examples/jobs/first-job.json");

  @Test
  void theSampleIsFifteenLinesCompilesAndPrintsWhatTheReadmeSays(@TempDir Path folder)
      throws Exception {
    String sample = block("java");
    Path source = Files.writeString(folder.resolve("Shop.java"), sample);

    int result =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, "-d", folder.toString(), source.toString());

    assertThat(result).isZero();
    assertThat(bodyOf(sample)).hasSizeLessThanOrEqualTo(15);
    assertThat(printedBy("Shop", folder)).isEqualTo(block("console"));
  }

  @Test
  void theWholeJobIsUnderThirtyLinesCompilesAndPrintsWhatTheReadmeSays(@TempDir Path folder)
      throws Exception {
    String sample = block("java-chain");
    Path source = Files.writeString(folder.resolve("WholeJob.java"), sample);

    int result =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, "-d", folder.toString(), source.toString());

    assertThat(result).isZero();
    assertThat(sample.lines()).hasSizeLessThan(30);
    Path sheets = folder.resolve("sheets");
    assertThat(
            printedBy(
                "WholeJob",
                folder,
                ROOT.resolve("brake-examples/jobs/tractor-and-trailer.json").toString(),
                ROOT.resolve("brake-examples/records/tractor-and-trailer.json").toString(),
                sheets.toString()))
        .isEqualTo(block("console-chain"));
    assertThat(sheets.toFile().list()).hasSize(6);
  }

  @Test
  void everyCommandOfTheTourWorks(@TempDir Path folder) throws IOException {
    List<String> commands = block("sh").lines().filter(line -> line.startsWith("brake ")).toList();
    assertThat(commands).hasSize(8);
    for (String command : commands) {
      List<String> here = List.of(command.substring("brake ".length()).split(" > "));
      CommandLineRun run = CommandLineRun.of(in(here.get(0), folder).split(" "));
      assertThat(run.exitCode()).as(command).isZero();
      if (here.size() > 1) {
        Files.writeString(folder.resolve(here.get(1)), run.out());
      }
    }
  }

  private static String in(String command, Path folder) {
    return command
        .replace("brake-examples/", ROOT.resolve("brake-examples") + "/")
        .replace("--out sheets", "--out " + folder.resolve("sheets"))
        .replace("replay filed", "replay " + folder.resolve("filed"));
  }

  @Test
  void theJobIsTheDemoFile() throws IOException {
    assertThat(block("json")).isEqualTo(Files.readString(FIRST_JOB));
  }

  @Test
  void theReportIsPrintedByTheProgram() throws IOException {
    StringWriter out = new StringWriter();
    Terminal terminal =
        new Terminal(InputStream.nullInputStream(), new PrintWriter(out), new PrintWriter(out));

    Main.run(terminal, "decide", FIRST_JOB.toString());

    String[] pieces = block("text").split("(?m)^\\[\\.\\.\\.]\n");
    assertThat(pieces).hasSizeGreaterThan(1);
    assertThat(out.toString()).containsSubsequence(List.of(pieces));
  }

  @Test
  void theFiguresArePrintedByTheProgram() throws IOException {
    assertThat(CommandLineRun.of("figures", DemoJob.WORN_OUT_WHEEL_END.path()).out())
        .contains(block("figures"));
  }

  @Test
  void theBatchComesToWhatTheReadmeSays(@TempDir Path folder) throws IOException {
    CommandLineRun run =
        CommandLineRun.of(
            "batch",
            ROOT.resolve("brake-examples/batches/harrowmere-week.jsonl").toString(),
            "--out",
            folder.resolve("decided.jsonl").toString());

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out())
        .containsSubsequence(List.of(block("batch").split("(?m)^\\[\\.\\.\\.]\n")));
  }

  @Test
  void theTableOfCommandsNamesEachCommandOnceAndNothingElse() throws IOException {
    String readme = Files.readString(ROOT.resolve("README.md"));
    String chapter = readme.split("## Commands\n", 2)[1].split("\n## ", 2)[0];
    List<String> rows = chapter.lines().dropWhile(line -> !line.startsWith("| ---")).toList();
    String help = CommandLineRun.of("--help").out().split("Commands:\n", 2)[1].split("\n\n", 2)[0];

    assertThat(firstGroups("(?m)^\\| `([\\w-]+)", chapter))
        .containsExactlyInAnyOrderElementsOf(firstGroups("(?m)^  ([a-z-]+) ", help));
    assertThat(rows).allMatch(line -> line.isEmpty() || line.startsWith("| "));
  }

  private static List<String> firstGroups(String pattern, String text) {
    return Pattern.compile(pattern).matcher(text).results().map(found -> found.group(1)).toList();
  }

  /** The lines between the braces of the main method. */
  private static List<String> bodyOf(String sample) {
    List<String> lines = sample.lines().toList();
    return lines.stream()
        .skip(lines.indexOf("  public static void main(String[] args) {") + 1L)
        .takeWhile(line -> !line.equals("  }"))
        .toList();
  }

  private static String printedBy(String type, Path folder, String... arguments) throws Exception {
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    try (URLClassLoader loader = new URLClassLoader(new URL[] {folder.toUri().toURL()})) {
      System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
      var main = loader.loadClass(type).getDeclaredMethod("main", String[].class);
      main.setAccessible(true);
      main.invoke(null, (Object) arguments);
    } finally {
      System.setOut(before);
    }
    return printed.toString(StandardCharsets.UTF_8);
  }

  private static String block(String language) throws IOException {
    var matcher =
        Pattern.compile("^```" + language + "\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL)
            .matcher(Files.readString(ROOT.resolve("README.md")));
    assertThat(matcher.find()).as("a block of " + language).isTrue();
    return matcher.group(1);
  }
}
