package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.brakerules.BrakeRules;
import org.brakerules.harness.sheet.Sheets;
import org.brakerules.model.json.JobReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;

/** The pictures on the pages to work by, as a technician reads them. */
class SheetPicturesTest {

  @ParameterizedTest
  @EnumSource
  void no_words_of_a_picture_lie_on_others_or_beyond_its_edge(DemoJob job) throws Exception {
    for (Element picture : pictures(job)) {
      String[] view = picture.getAttribute("viewBox").split(" ");
      List<Label> labels = Label.all(picture);
      for (Label label : labels) {
        assertThat(label.lies(Double.parseDouble(view[2]), Double.parseDouble(view[3])))
            .as("%s", label)
            .isTrue();
        assertThat(labels)
            .filteredOn(other -> other != label && other.overlaps(label))
            .as("on %s", label)
            .isEmpty();
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void no_words_beside_the_camshaft_lie_on_a_part(DemoJob job) throws Exception {
    for (Element picture : pictures(job)) {
      for (Label label : Label.all(picture)) {
        assertThat(Svg.elements(picture, "rect"))
            .filteredOn(box -> !isMark(box) && label.isCutBy(box))
            .as("under %s", label)
            .isEmpty();
      }
    }
  }

  /** The square around a number is its mark. */
  private static boolean isMark(Element box) {
    return Svg.number(box, "width") == 22 && Svg.number(box, "height") == 22;
  }

  @ParameterizedTest
  @EnumSource
  void each_view_says_from_where_it_is_seen(DemoJob job) throws Exception {
    for (Element picture : pictures(job)) {
      String words = picture.getTextContent();
      assertThat(Svg.elements(picture, "title")).hasSize(1);
      assertThat(Svg.elements(picture, "desc")).hasSize(1);
      if (picture.getAttribute("aria-labelledby").startsWith("parts")) {
        assertThat(words)
            .contains(" brake seen from the wheel, released")
            .contains("seen from the wheel too")
            .contains("cam head left");
      }
    }
  }

  @Test
  void the_page_of_a_left_brake_says_left_and_that_of_a_right_brake_right() throws Exception {
    Map<String, String> pages = pages(DemoJob.TRACTOR_AND_TRAILER);
    assertThat(pages.get("tractor-axle2-left.html"))
        .contains("Left brake seen from the wheel", "front to the left", "to the left, against");
    assertThat(pages.get("tractor-axle2-right.html"))
        .contains("Right brake seen from the wheel", "front to the right", "to the right, with");
  }

  @Test
  void a_shim_that_comes_out_is_not_drawn_as_one_that_goes_back() throws Exception {
    Map<String, String> pages = pages(DemoJob.TRACTOR_AND_TRAILER);
    assertThat(pages.get("tractor-axle2-left.html")).contains("a dashed ring: comes out");
    assertThat(pages.get("tractor-axle2-right.html")).doesNotContain("comes out");
  }

  @Test
  void a_shoe_with_a_worn_lining_is_not_drawn_as_one_that_goes_back() throws Exception {
    assertThat(pages(DemoJob.CLEAN_RELINE).values())
        .allMatch(page -> page.contains("a black square: relined or exchanged"));
    assertThat(pages(DemoJob.TRACTOR_AND_TRAILER).get("tractor-axle2-left.html"))
        .doesNotContain("relined or exchanged");
  }

  @Test
  void the_number_of_the_camshaft_points_at_the_cam_where_its_end_play_is_adjusted_too()
      throws Exception {
    String page = pages(DemoJob.TRACTOR_AND_TRAILER).get("tractor-axle2-left.html");
    assertThat(page).contains("1 camshaft: <strong>adjust.", "8 shim, spline end");
    Element parts = Svg.pictures(page).get(0);
    assertThat(leaderEnd(parts, "1")).isEqualTo("296 195").isNotEqualTo(leaderEnd(parts, "8"));
  }

  @ParameterizedTest
  @EnumSource
  void every_number_has_a_line_that_leads_away_from_it(DemoJob job) throws Exception {
    for (Element picture : pictures(job)) {
      assertThat(Svg.elements(picture, "text").filter(SheetPicturesTest::isNumber))
          .allSatisfy(
              number -> {
                String[] end = leaderEnd(picture, number.getTextContent()).split(" ");
                assertThat(
                        Math.hypot(
                            Svg.number(number, "x") - Double.parseDouble(end[0]),
                            Svg.number(number, "y") - 5.3 - Double.parseDouble(end[1])))
                    .isGreaterThan(16);
              });
    }
  }

  private static boolean isNumber(Element text) {
    return text.getTextContent().matches("[0-9]+");
  }

  /** Where the line ends that begins in the middle of a number. */
  private static String leaderEnd(Element picture, String number) {
    Element mark =
        Svg.elements(picture, "text")
            .filter(text -> isNumber(text) && text.getTextContent().equals(number))
            .findFirst()
            .orElseThrow();
    return Svg.elements(picture, "line")
        .filter(line -> Svg.number(line, "x1") == Svg.number(mark, "x"))
        .filter(line -> Math.abs(Svg.number(line, "y1") + 5.3 - Svg.number(mark, "y")) < 0.11)
        .map(line -> line.getAttribute("x2") + " " + line.getAttribute("y2"))
        .findFirst()
        .orElseThrow();
  }

  private static List<Element> pictures(DemoJob job) throws Exception {
    StringBuilder all = new StringBuilder("<html>");
    pages(job).values().forEach(page -> all.append(page.substring(page.indexOf("<html"))));
    return Svg.pictures(all.append("</html>").toString());
  }

  private static Map<String, String> pages(DemoJob job) throws Exception {
    return Sheets.of(BrakeRules.standard(), JobReader.read(job.file()));
  }
}
