package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * The figures of the demo jobs, word for word. After a wanted change write them anew with {@code
 * -Dregenerate=true} and work out again what changed.
 */
class FiguresCommandTest {

  @ParameterizedTest
  @EnumSource
  void demo_job_gives_the_figures_that_were_worked_out(DemoJob job) throws IOException {
    CommandLineRun run = CommandLineRun.of("figures", job.path());
    if (Boolean.getBoolean("regenerate")) {
      Files.createDirectories(job.figures().getParent());
      Files.writeString(job.figures(), run.out());
    }
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).isEqualTo(Files.readString(job.figures()));
    assertThat(run.out().lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void json_has_every_figure_of_the_text() throws IOException {
    String path = DemoJob.WORN_OUT_WHEEL_END.path();
    JsonNode json = new ObjectMapper().readTree(CommandLineRun.of("figures", "--json", path).out());
    JsonNode figures = json.at("/wheelEnds/0/figures");
    String text = CommandLineRun.of("figures", path).unwrapped();
    assertThat(figures).hasSizeGreaterThan(20);
    for (JsonNode figure : figures) {
      assertThat(text)
          .contains(figure.path("title").asText() + " - " + figure.path("about").asText());
      assertThat(figure.path("basis").path("source").asText()).isNotEmpty();
    }
    assertThat(figures.findValuesAsText("id"))
        .contains("margin", "stroke.power", "stroke.reserve", "lost-motion", "end-play.shims");
  }

  @ParameterizedTest
  @EnumSource
  void drawings_are_well_formed_in_black_and_white_and_say_in_words_what_they_show(
      DemoJob job, @TempDir Path folder) throws Exception {
    CommandLineRun.of("figures", "--svg", folder.toString(), job.path());
    for (Path drawing : files(folder)) {
      Document svg = parsed(Files.readString(drawing));
      assertThat(words(svg, "title")).as("%s", drawing).contains("axle");
      assertThat(words(svg, "desc")).as("%s", drawing).isNotBlank();
      assertThat(svg.getElementsByTagName("script").getLength()).isZero();
      assertThat(colours(svg)).isSubsetOf("black", "white", "none", "");
    }
  }

  @Test
  void a_wheel_end_with_plays_and_an_arm_has_two_drawings(@TempDir Path folder) throws IOException {
    Path made = folder.resolve("made/here");
    CommandLineRun.of("figures", "--svg", made.toString(), DemoJob.WORN_OUT_WHEEL_END.path());
    assertThat(files(made))
        .extracting(file -> String.valueOf(file.getFileName()))
        .containsExactly("axle2-left-readings.svg", "axle2-left-stroke-budget.svg");
  }

  @Test
  void a_folder_that_cannot_be_made_is_told_and_nothing_is_printed(@TempDir Path folder)
      throws IOException {
    Path inTheWay = Files.writeString(folder.resolve("taken"), "a file");
    CommandLineRun run =
        CommandLineRun.of("figures", "--svg", inTheWay.toString(), DemoJob.FIRST_JOB.path());
    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints()).singleElement().asString().contains("name another folder");
    assertThat(inTheWay).hasContent("a file");
  }

  @Test
  void a_job_that_is_none_is_told_where() {
    CommandLineRun run = CommandLineRun.withInput("{\"date\": 5}", "figures", "-");
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints()).isNotEmpty().allMatch(line -> line.startsWith("standard input: "));
  }

  @Test
  void a_file_that_is_not_there_is_told() {
    CommandLineRun run = CommandLineRun.of("figures", "nowhere.json");
    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints()).containsExactly("nowhere.json: no such file");
  }

  private static List<Path> files(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  private static Document parsed(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }

  private static String words(Document svg, String element) {
    return svg.getElementsByTagName(element).item(0).getTextContent();
  }

  private static List<String> colours(Document svg) {
    NodeList all = svg.getElementsByTagName("*");
    return Stream.iterate(0, i -> i < all.getLength(), i -> i + 1)
        .map(i -> (Element) all.item(i))
        .flatMap(one -> Stream.of(one.getAttribute("fill"), one.getAttribute("stroke")))
        .toList();
  }
}
