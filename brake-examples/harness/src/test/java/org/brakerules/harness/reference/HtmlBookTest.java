package org.brakerules.harness.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.brakerules.BrakeRules;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** The book is one file that leads everywhere by itself, on a screen, by keyboard and by ear. */
class HtmlBookTest {

  private static String html = "";
  private static ParsedBook book = new ParsedBook("<html/>");

  @BeforeAll
  static void makeTheBook() {
    html = ReferenceBook.standard().html();
    book = new ParsedBook(html);
  }

  @Test
  void every_link_leads_to_a_place_in_the_book() {
    assertThat(book.links())
        .hasSizeGreaterThan(10_000)
        .allSatisfy(link -> assertThat(link).startsWith("#"))
        .allSatisfy(link -> assertThat(book.click(link)).as(link).isPresent());
  }

  @Test
  void no_id_is_there_twice() {
    assertThat(book.ids()).hasSizeGreaterThan(2_000).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @CsvSource({"link", "img", "iframe", "object", "embed", "source", "base"})
  void nothing_is_fetched_by_an_element(String tag) {
    assertThat(book.elements(tag)).isEmpty();
  }

  @Test
  void nothing_is_fetched_by_style_or_script() {
    assertThat(book.elements("*"))
        .noneMatch(element -> element.hasAttribute("src") || element.hasAttribute("style"));
    assertThat(BookText.read("book.css")).doesNotContain("url(", "@import");
    assertThat(BookText.read("book.js")).doesNotContain("fetch", "import", "XMLHttp", "http");
  }

  @Test
  void style_and_script_are_in_the_file() {
    assertThat(html)
        .contains(
            "<meta charset=\"utf-8\" />", BookText.read("book.css"), BookText.read("book.js"));
  }

  @Test
  void every_page_of_the_markdown_is_a_section_named_by_its_title() {
    int pages = ReferenceBook.standard().pages().size();
    assertThat(book.elements("section"))
        .hasSize(pages)
        .allSatisfy(
            section ->
                assertThat(book.click("#" + section.getAttribute("aria-labelledby")))
                    .map(Element::getTagName)
                    .contains("h2"));
  }

  @Test
  void the_contents_lead_to_every_section() {
    List<String> contents = book.linksBelow(book.elements("h2").get(0));
    assertThat(contents).contains("#rules", "#limits", "#traceability", "#conflicts", "#chamber");
    assertThat(book.elements("nav")).hasSize(1);
  }

  @Test
  void no_rank_of_heading_is_left_out() {
    List<Integer> ranks =
        book.elements("*").stream().map(ParsedBook::rank).flatMap(Optional::stream).toList();
    assertThat(ranks).startsWith(1, 2).hasSizeGreaterThan(1_000);
    for (int i = 1; i < ranks.size(); i++) {
      assertThat(ranks.get(i)).isLessThanOrEqualTo(ranks.get(i - 1) + 1);
    }
  }

  @Test
  void a_screen_reader_finds_language_landmarks_labels_and_table_heads() {
    assertThat(book.elements("html").get(0).getAttribute("lang")).isEqualTo("en");
    assertThat(book.elements("main")).hasSize(1);
    assertThat(book.elements("header")).hasSize(1);
    assertThat(book.elements("form").get(0).getAttribute("role")).isEqualTo("search");
    assertThat(book.elements("label").get(0).getAttribute("for"))
        .isEqualTo(book.elements("input").get(0).getAttribute("id"));
    assertThat(book.elements("th"))
        .hasSizeGreaterThan(500)
        .allMatch(head -> head.getAttribute("scope").equals("col"));
  }

  @Test
  void the_version_of_the_rule_base_stands_at_the_top() {
    assertThat(book.elements("header").get(0).getTextContent())
        .contains(BrakeRules.standard().version().fingerprint());
  }

  @Test
  void text_of_a_page_is_never_taken_for_markup() {
    Page page = new Page("a.md", "# A < B\n\n<script>alert(1)</script> & <b>`<i>`</b>\n");

    String section = new HtmlPage(page, new BookAnchors(List.of(page))).html();

    assertThat(section).contains("A &lt; B", "&lt;script&gt;").doesNotContain("<script", "<b>");
  }

  @Test
  void the_book_is_the_same_every_time() {
    assertThat(ReferenceBook.standard().html()).isEqualTo(html);
  }
}
