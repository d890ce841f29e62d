package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.brakerules.BrakeRules;
import org.brakerules.harness.sheet.Sheets;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.json.JobReader;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What a page says to someone who has nothing but the page. */
class SheetAtTheBenchTest {

  private static final Path JOBS = Path.of("..", "jobs");

  @Test
  void a_wheel_end_that_waits_for_another_says_that_it_stays_caged_and_on_stands()
      throws Exception {
    String page = text(page("wheel-on", "trailer-axle3-right"));
    assertThat(page)
        .contains("Work waits here")
        .contains("The plan stops at trailer/axle3/left, and this wheel end waits for it.")
        .contains("The spring brake here stays caged: this wheel has no parking brake.")
        .contains("The axle stays on its blocked stands");
    assertThat(page.indexOf("Here the plan ends for now."))
        .isGreaterThan(page.indexOf("Put the air line on its port"));
  }

  @Test
  void an_axle_that_nobody_raised_stays_on_its_wheels() throws Exception {
    assertThat(text(page("damaged-spring-brake", "axle3-left")))
        .contains("The axle stays on its wheels: the parking brakes stay set")
        .contains("keep everybody clear of the unit")
        .doesNotContain("blocked stands");
  }

  @Test
  void a_page_on_hold_prints_no_step_beyond_it_and_leaves_the_adjuster_alone() throws Exception {
    assertThat(text(page("wheel-on", "trailer-axle3-left")))
        .contains(
            "what becomes of the parts waits as long", "never tighten it, which hides the cause")
        .doesNotContain("Order by the parts list");
  }

  @Test
  void of_several_axles_those_not_worked_on_stay_on_their_wheels() throws Exception {
    String several =
        "where these are all its axles stop here: a plan for each, the others on their wheels";
    assertThat(text(page("tractor-and-trailer", "tractor-axle2-left")))
        .contains("this plan raises tractor/axle1, tractor/axle2, trailer/axle1")
        .contains(several);
    assertThat(text(page("clean-reline", "axle2-left"))).doesNotContain(several);
  }

  @Test
  void the_rod_of_a_chamber_that_is_replaced_does_not_go_back() throws Exception {
    assertThat(text(page("damaged-spring-brake", "axle3-left")))
        .contains("push rod: new part. Comes with the new brake chamber, as one unit.");
  }

  @Test
  void a_page_that_goes_to_the_last_proof_has_no_such_word() throws Exception {
    assertThat(text(page("tractor-and-trailer", "tractor-axle2-left")))
        .doesNotContain("Work waits here", "Work stops here", "Here the plan ends");
  }

  @Test
  void a_hold_names_what_was_found_on_the_same_page() throws Exception {
    assertThat(text(page("worn-out-wheel-end", "axle2-left")))
        .contains("may be the source, camshaft seal, head end: The head seal has its open side");
  }

  @Test
  void a_page_says_that_the_other_end_is_relined_too_even_on_hold() throws Exception {
    assertThat(text(page("worn-out-wheel-end", "axle2-left")))
        .contains("Work stops here")
        .contains("axle2/right, the other end of the axle, is not in this job. New there too: ");
    assertThat(text(page("tractor-and-trailer", "tractor-axle2-left")))
        .doesNotContain("the other end of the axle, is not in this job");
  }

  @Test
  void caution_and_write_down_are_blocks_of_their_own() throws Exception {
    Document page = page("tractor-and-trailer", "tractor-axle2-left");
    assertThat(all(page, "caution")).isNotEmpty();
    assertThat(all(page, "record")).isNotEmpty();
    String style = page.getElementsByTagName("style").item(0).getTextContent();
    assertThat(style).contains(".work span { display: block; }");
    assertThat(style.substring(style.indexOf("@media print")))
        .doesNotContain(".record { display: inline", ".caution, ");
  }

  @Test
  void each_caution_is_spelled_out_once_in_the_list_and_once_at_its_first_step() throws Exception {
    String page = text(page("tractor-and-trailer", "tractor-axle2-left"));
    WorkPlan plan = plan("tractor-and-trailer");
    for (Caution caution : plan.cautions()) {
      assertThat(page.split(Pattern.quote(caution.text()), -1).length - 1)
          .as(caution.id())
          .isBetween(1, 2);
    }
  }

  @Test
  void there_are_twelve_blanks_for_the_bore_and_six_for_each_lining() throws Exception {
    Document page = page("tractor-and-trailer", "tractor-axle2-left");
    assertThat(blanks(page, "INSPECT-020")).isEqualTo(14);
    assertThat(blanks(page, "TEARDOWN-100")).isEqualTo(13);
  }

  @Test
  void the_page_says_what_to_grease() throws Exception {
    assertThat(text(page("tractor-and-trailer", "tractor-axle2-left")))
        .contains("Grease: seal lip.");
  }

  @Test
  void shims_that_are_changed_do_not_go_back_and_those_that_go_in_are_on_the_list()
      throws Exception {
    String page = text(page("tractor-and-trailer", "tractor-axle2-left"));
    assertThat(page)
        .contains(
            "8 shim, spline end: comes out. Take out 1 x 0.03 in used; put in 1 x 0.06 in new")
        .contains("only an estimate: measure with the trial ring in, then choose")
        .contains("Out of the shims at hand 1 x 0.06 in new")
        .doesNotContain("8 shim, spline end;");
  }

  @Test
  void shims_that_stay_are_measured_again_with_the_new_parts_in() throws Exception {
    assertThat(text(page("tractor-and-trailer", "trailer-axle1-left")))
        .contains("inside the band, leave the shims; end play")
        .contains("only an estimate: measure with the trial ring and the new camshaft");
  }

  @Test
  void the_head_line_denies_no_torque_that_the_page_prints() throws Exception {
    assertThat(text(page("tractor-and-trailer", "tractor-axle2-left")))
        .contains("Tightening torques are the maker's.")
        .contains("never above 35 lbf.ft")
        .doesNotContain("Nothing here is a torque");
  }

  @Test
  void shoes_that_are_ordered_with_their_lining_do_not_go_back() throws Exception {
    assertThat(text(page("tractor-and-trailer", "trailer-axle1-left")))
        .contains(
            "29, 30 shoe, upper and lower: relined or exchanged. In exchange with its lining.")
        .doesNotContain("29 shoe, upper;");
  }

  @Test
  void an_undecided_part_says_what_it_needs_or_the_step_that_does() throws Exception {
    assertThat(text(page("wheel-on", "trailer-axle3-right")))
        .containsPattern("Needed: (look|measure|state)")
        .containsPattern("clevis: decide first\\.[^.]*\\. Needed: see step [0-9]+\\.");
  }

  @Test
  void what_is_read_with_air_up_waits_while_no_air_comes() throws Exception {
    assertThat(text(page("wheel-on", "trailer-axle3-right")))
        .contains("What is read with air up waits until every brake is closed.");
  }

  @Test
  void pins_that_are_saved_from_the_worn_shoes_are_looked_at_first_where_they_are_undecided()
      throws Exception {
    String order = text(page("worn-out-wheel-end", "axle2-left"));
    assertThat(order.substring(order.indexOf("Look at first"))).contains("2 return spring pins");
  }

  @Test
  void a_spring_brake_on_the_bench_does_not_stay_on_its_bracket() throws Exception {
    assertThat(text(page("worn-out-wheel-end", "axle2-left")))
        .contains("The spring brake here is off and lies caged")
        .doesNotContain("The spring brake here stays caged");
    assertThat(text(page("wheel-on", "trailer-axle3-right")))
        .contains("The spring brake here stays caged");
  }

  @Test
  void a_new_part_that_was_inspected_does_not_go_back() throws Exception {
    assertThat(text(page("finished-rebuild", "axle2-left")))
        .contains("New already: camshaft seal")
        .containsPattern("4, 5 camshaft seal, [^:]*: new already\\.")
        .contains("not worked out, for want of the thickness of each shim fitted")
        .doesNotContain("Goes back: camshaft seal", "Goes back: snap ring", "5 camshaft seal;")
        .contains("is not pressed again")
        .doesNotContain("Take out the old camshaft seals");
  }

  @Test
  void a_page_of_few_steps_is_printed_in_larger_letters() throws Exception {
    assertThat(body(page("damaged-spring-brake", "axle3-left"))).isEqualTo("few");
    assertThat(body(page("tractor-and-trailer", "tractor-axle2-left"))).isEmpty();
  }

  private static String body(Document page) {
    return ((Element) page.getElementsByTagName("body").item(0)).getAttribute("class");
  }

  private static int blanks(Document page, String id) throws IOException {
    WorkStep step =
        plan("tractor-and-trailer").steps().stream()
            .filter(one -> one.id().equals(id) && one.on().equals("tractor/axle2/left"))
            .findFirst()
            .orElseThrow();
    NodeList lines = page.getElementsByTagName("li");
    for (int i = 0; i < lines.getLength(); i++) {
      Element line = (Element) lines.item(i);
      if (line.getAttribute("value").equals(Integer.toString(step.number()))) {
        return (int) classes(line).stream().filter(one -> one.startsWith("blank")).count();
      }
    }
    throw new IllegalStateException("no step " + step.number());
  }

  private static List<String> all(Document page, String kind) {
    return classes(page.getDocumentElement()).stream().filter(kind::equals).toList();
  }

  private static List<String> classes(Element element) {
    List<String> classes = new ArrayList<>();
    NodeList spans = element.getElementsByTagName("span");
    for (int i = 0; i < spans.getLength(); i++) {
      classes.add(((Element) spans.item(i)).getAttribute("class"));
    }
    return classes;
  }

  private static WorkPlan plan(String job) throws IOException {
    return BrakeRules.standard().plan(JobReader.read(JOBS.resolve(job + ".json")));
  }

  private static Document page(String job, String sheet) throws Exception {
    Map<String, String> sheets =
        Sheets.of(BrakeRules.standard(), JobReader.read(JOBS.resolve(job + ".json")));
    String text = Objects.requireNonNull(sheets.get(sheet + ".html"));
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(text.substring(text.indexOf("<html")))));
  }

  private static String text(Document page) {
    return page.getElementsByTagName("main").item(0).getTextContent().replaceAll("\\s+", " ");
  }
}
