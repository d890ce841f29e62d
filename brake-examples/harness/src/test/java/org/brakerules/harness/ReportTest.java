package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The reports of the demo jobs, word for word. After a wanted change write them anew with {@code
 * -Dregenerate=true} and read what changed.
 */
class ReportTest {

  @ParameterizedTest
  @EnumSource
  void demo_job_gives_the_report_that_was_agreed_on(DemoJob job) throws IOException {
    String report = withoutFingerprint(CommandLineRun.of("decide", job.path()).out());
    if (Boolean.getBoolean("regenerate")) {
      Files.createDirectories(job.report().getParent());
      Files.writeString(job.report(), report);
    }
    assertThat(report).isEqualTo(Files.readString(job.report()));
  }

  @ParameterizedTest
  @EnumSource
  void no_line_is_wider_than_the_page(DemoJob job) {
    assertThat(CommandLineRun.of("decide", job.path()).out().lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void reading_in_millimetres_is_shown_with_an_inch_limit_in_millimetres_as_well() {
    assertThat(CommandLineRun.of("decide", DemoJob.WORN_CAMSHAFT.path()).unwrapped())
        .contains("radial play 0.66 mm at the spline end")
        .contains("limit at most 0.020 in (0.508 mm)")
        .contains("0.152 mm beyond it");
  }

  @ParameterizedTest
  @EnumSource(
      names = {"WORN_OUT_WHEEL_END", "OIL_ON_THE_LINING", "CRACKED_DRUM", "DAMAGED_SPRING_BRAKE"})
  void holds_come_first_then_what_is_replaced_then_the_looks_then_what_goes_back(DemoJob job) {
    String report = report(job);

    assertThat(report).contains("HOLD - stop work on ").contains("On hold: of all that follows");
    assertThat(
            Stream.of(
                    "HOLD - stop work on ",
                    "\nReplace\n",
                    "\nLook at and measure next, in this order\n",
                    "\nCannot be decided yet\n",
                    "\nGoes back\n")
                .map(report::indexOf)
                .filter(at -> at >= 0))
        .hasSizeGreaterThanOrEqualTo(4)
        .isSorted();
  }

  @Test
  void road_answer_is_given_where_the_rule_set_speaks() {
    assertThat(report(DemoJob.WHEEL_ON))
        .contains("On the road under quebec: failed.")
        .contains("On the road under quebec: open for camshaft.");
    assertThat(report(DemoJob.FINISHED_REBUILD)).contains("On the road under us-federal: met");
  }

  @Test
  void bushings_with_the_same_notes_are_named_together() {
    assertThat(report(DemoJob.WORN_CAMSHAFT)).contains("camshaft bushing, head end and spline end");
  }

  @Test
  void what_is_still_needed_says_where_with_what_how_and_against_which_limit() {
    assertThat(report(DemoJob.WHEEL_ON))
        .contains("clevis: measure movement of the pin in its hole (not measured)")
        .contains("With: feeler gauge. Push the arm one way")
        .contains("Limit it will meet: less than 1/16 in");
  }

  @Test
  void while_work_is_on_hold_no_look_applies_the_brake() {
    assertThat(CommandLineRun.of("decide", DemoJob.DAMAGED_SPRING_BRAKE.path()).unwrapped())
        .contains("looks that apply the brake are left out")
        .doesNotContain("with the brake fully applied");
  }

  private static String report(DemoJob job) {
    return CommandLineRun.of("decide", job.path()).out();
  }

  private static String withoutFingerprint(String report) {
    return report.replaceAll("fingerprint [0-9a-f]{12}", "fingerprint ............");
  }
}
