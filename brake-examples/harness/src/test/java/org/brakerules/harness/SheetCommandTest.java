package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.brakerules.BrakeRules;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.json.JobReader;
import org.brakerules.work.WorkStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The pages to work by. */
class SheetCommandTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void every_page_is_well_formed_and_needs_nothing_beside_it(DemoJob job) throws Exception {
    for (Path sheet : sheets(job)) {
      String text = Files.readString(sheet);
      assertThat(text).startsWith("<!DOCTYPE html>\n").doesNotContain("<script", "<link", "url(");
      Document page = parsed(text);
      List<String> ids = attributes(page, "id");
      assertThat(ids).doesNotHaveDuplicates();
      for (String names : attributes(page, "aria-labelledby")) {
        assertThat(ids).contains(names.split(" "));
      }
      assertThat(attributes(page, "src")).isEmpty();
      assertThat(attributes(page, "href")).isEmpty();
      assertThat(page.getElementsByTagName("h1").getLength()).isOne();
      assertThat(attributes(page, "fill")).isSubsetOf("black", "white", "none", "silver", "gray");
    }
  }

  @ParameterizedTest
  @EnumSource
  void the_pages_have_every_part_that_is_not_simply_put_back_with_its_rule(DemoJob job)
      throws IOException {
    String all = words(job);
    for (Decision decision : BrakeRules.standard().decide(JobReader.read(job.file())).decisions()) {
      assertThat(all).contains(decision.part().kind().inWords());
      if (decision.disposition() == Disposition.REPLACE) {
        assertThat(all).contains(decision.reasons().get(0).rule());
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void the_pages_have_every_step_with_its_hold_point(DemoJob job) throws IOException {
    String all = words(job);
    for (WorkStep step : BrakeRules.standard().plan(JobReader.read(job.file())).steps()) {
      assertThat(all).contains(step.text());
      if (step.hold()) {
        assertThat(all).contains("Passes when " + step.passesWhen() + ".");
      }
      step.cautions().forEach(caution -> assertThat(all).contains(caution.text()));
    }
  }

  @Test
  void there_is_one_page_for_each_wheel_end_named_after_it() throws IOException {
    assertThat(sheets(DemoJob.TRACTOR_AND_TRAILER))
        .extracting(sheet -> String.valueOf(sheet.getFileName()))
        .containsExactly(
            "tractor-axle1-left.html",
            "tractor-axle1-right.html",
            "tractor-axle2-left.html",
            "tractor-axle2-right.html",
            "trailer-axle1-left.html",
            "trailer-axle1-right.html");
  }

  @Test
  void a_wheel_end_on_hold_says_so_first() throws IOException {
    assertThat(words(DemoJob.DAMAGED_SPRING_BRAKE)).contains("Work stops here");
  }

  @Test
  void a_file_in_the_way_of_the_folder_is_told() throws IOException {
    Path taken = Files.writeString(folder.resolve("taken"), "");
    CommandLineRun run =
        CommandLineRun.of("sheet", DemoJob.FIRST_JOB.path(), "--out", taken.toString());
    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints()).singleElement().asString().endsWith("; name another place");
  }

  @Test
  void the_folder_must_be_named() {
    CommandLineRun run = CommandLineRun.of("sheet", DemoJob.FIRST_JOB.path());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("--out");
  }

  private List<Path> sheets(DemoJob job) throws IOException {
    CommandLineRun run =
        CommandLineRun.of("sheet", job.path(), "--out", folder.resolve("made").toString());
    assertThat(run.exitCode()).isZero();
    try (Stream<Path> files = Files.list(folder.resolve("made"))) {
      return files.sorted().toList();
    }
  }

  /** The words of all pages of a job, without the marks around them. */
  private String words(DemoJob job) throws IOException {
    StringBuilder all = new StringBuilder();
    for (Path sheet : sheets(job)) {
      all.append(Files.readString(sheet));
    }
    return all.toString()
        .replaceAll("<[^>]*>", "")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&amp;", "&");
  }

  private static Document parsed(String page) throws Exception {
    String body = page.substring(page.indexOf("<html"));
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(body)));
  }

  private static List<String> attributes(Document page, String name) {
    List<String> values = new ArrayList<>();
    NodeList elements = page.getElementsByTagName("*");
    for (int i = 0; i < elements.getLength(); i++) {
      Element element = (Element) elements.item(i);
      if (element.hasAttribute(name)) {
        values.add(element.getAttribute(name));
      }
    }
    return values;
  }
}
