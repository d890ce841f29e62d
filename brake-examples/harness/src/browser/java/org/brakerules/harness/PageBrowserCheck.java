package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The HTML pages as a browser shows and prints them. */
@TestInstance(Lifecycle.PER_CLASS)
class PageBrowserCheck {

  /** Below it a printed page cannot be read at the bench. */
  private static final double SMALLEST_POINTS = 6;

  private static final Pattern PDF_PAGE = Pattern.compile("/Type\\s*/Page\\b");

  private Chromium browser;
  private List<Path> sheets;
  private List<Path> books;

  @BeforeAll
  void the_commands_write_their_pages() throws IOException {
    browser = Chromium.start();
    sheets = MadePages.sheets();
    books = MadePages.books();
  }

  @AfterAll
  void no_browser_stays_behind() {
    browser.close();
  }

  Stream<Path> sheets() {
    return sheets.stream();
  }

  Stream<Path> pages() {
    return Stream.concat(sheets.stream(), books.stream());
  }

  @ParameterizedTest
  @MethodSource("pages")
  void a_page_is_valid_html(Path page) throws Exception {
    assertThat(HtmlChecker.mistakes(page)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void a_page_asks_for_nothing_and_complains_of_nothing(Path page) {
    browser.open(page);
    assertThat(browser.requests()).isEmpty();
    assertThat(browser.console()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void a_sheet_has_no_barrier(Path sheet) {
    browser.open(sheet);
    assertThat(browser.barriers()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void a_sheet_prints_on_few_pages_in_letters_that_can_be_read(Paper paper) throws IOException {
    List<String> tooMuch = new ArrayList<>();
    List<String> table = new ArrayList<>();
    for (Path sheet : sheets) {
      browser.open(sheet);
      Path pdf = Path.of(sheet.toString().replace(".html", "-" + paper + ".pdf"));
      browser.print(paper, pdf);
      long printed =
          PDF_PAGE.matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1)).results().count();
      double points = browser.smallestPrint(paper);
      String line = "%s: %d pages, letters of %.2f pt".formatted(sheet, printed, points);
      table.add(line);
      if (printed < 1 || printed > most(sheet) || points < SMALLEST_POINTS) {
        tooMuch.add(line);
      }
    }
    Files.write(MadePages.FOLDER.resolve("printed-" + paper + ".txt"), table);
    assertThat(tooMuch).isEmpty();
  }

  /** The first job leaves nearly every part undecided: what to look at fills half a page. */
  private static int most(Path sheet) {
    return sheet.startsWith(MadePages.folder(DemoJob.FIRST_JOB)) ? 3 : 2;
  }

  @Test
  void the_checkers_find_what_is_wrong() throws Exception {
    Path bad = MadePages.FOLDER.resolve("bad.html");
    Files.writeString(
        bad,
        "<!DOCTYPE html><html><head></head><body><p><img src='nowhere.png'></p>"
            + "<script>console.error('x')</script></body></html>");
    browser.open(bad);
    assertThat(browser.requests()).singleElement().asString().contains("nowhere.png");
    assertThat(browser.console()).isNotEmpty();
    assertThat(browser.barriers()).isNotEmpty();
    assertThat(HtmlChecker.mistakes(bad)).isNotEmpty();
  }
}
