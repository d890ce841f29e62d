package org.brakerules.harness.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.brakerules.trial.coverage.ListedItem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The page is parsed as XML, which forgives nothing. */
class CoverageHtmlTest {

  private static final ListedItem LISTED = new ListedItem("point", "hub.crack", "No rule yet");

  private static final Predicate<String> NOT_EMPTY = text -> !text.isEmpty();

  private Document page;

  @BeforeEach
  void parse_the_page() throws Exception {
    page =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(CoverageHtml.of(SmallCoverage.whole(LISTED)))));
  }

  @Test
  void ids_are_unique_and_every_link_leads_to_one() {
    List<String> ids = all("*").map(one -> one.getAttribute("id")).filter(NOT_EMPTY).toList();

    assertThat(ids).doesNotHaveDuplicates().contains("open", "shown", "sources", "rule-hose-010");
    assertThat(all("a").map(one -> one.getAttribute("href").substring(1))).isSubsetOf(ids);
  }

  @Test
  void every_table_has_a_caption_and_every_heading_of_it_a_scope() {
    assertThat(all("table")).hasSizeGreaterThan(5);
    assertThat(all("table"))
        .allSatisfy(
            table ->
                assertThat(table.getElementsByTagName("caption").item(0).getTextContent())
                    .isNotBlank());
    assertThat(all("th").map(one -> one.getAttribute("scope"))).containsOnly("col", "row");
  }

  @Test
  void every_row_fills_the_columns_of_its_table() {
    assertThat(all("table"))
        .allSatisfy(
            table -> assertThat(rows(table).map(CoverageHtmlTest::width).distinct()).hasSize(1));
  }

  @Test
  void it_needs_no_script_and_nothing_beside_it() {
    assertThat(all("script")).isEmpty();
    assertThat(all("*").map(one -> one.getAttribute("src")).filter(NOT_EMPTY)).isEmpty();
    assertThat(all("link")).isEmpty();
    assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
  }

  @Test
  void what_is_open_is_marked_in_words() {
    assertThat(
            all("td")
                .filter(cell -> cell.getAttribute("class").equals("open"))
                .map(Element::getTextContent))
        .containsExactly(
            "open: no case", "open: no case", "open: nobody reads it", "open: nothing rests on it");
  }

  @Test
  void names_of_cases_are_shown_as_they_are_written() {
    assertThat(all("li").map(Element::getTextContent)).contains("hose: A hose that <leaks>");
  }

  private Stream<Element> all(String name) {
    return elements(page.getElementsByTagName(name));
  }

  private static Stream<Element> rows(Element table) {
    return elements(table.getElementsByTagName("tr"));
  }

  private static int width(Element row) {
    return elements(row.getChildNodes())
        .map(cell -> cell.getAttribute("colspan"))
        .mapToInt(span -> span.isEmpty() ? 1 : Integer.parseInt(span))
        .sum();
  }

  private static Stream<Element> elements(NodeList nodes) {
    return IntStream.range(0, nodes.getLength())
        .mapToObj(nodes::item)
        .filter(Element.class::isInstance)
        .map(Element.class::cast);
  }
}
