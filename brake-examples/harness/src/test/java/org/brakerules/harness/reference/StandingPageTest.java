package org.brakerules.harness.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an auditor wants first is listed, and nothing with a text behind it. */
class StandingPageTest {

  /** The text of each section by its title. */
  private static final Map<String, String> SECTIONS =
      Arrays.stream(new StandingPage(Material.standard()).page().markdown().split("\n## "))
          .collect(
              Collectors.toMap(text -> text.lines().findFirst().orElse(""), Function.identity()));

  @ParameterizedTest
  @CsvSource({
    "Limits, camshaft.end-play.max",
    "Limits, wheel-speed-sensor.gap.max",
    "Rules, HUB-050",
    "Inspection points, hub.vent-blocked",
    "Inspection points, wheel-speed-sensor.gap",
    "Cautions, no-air-while-open",
    "Manuals cited as a whole, US-ARMY-TM-10-4610-239-24",
    "Manuals cited as a whole, caution wheel-nuts",
  })
  void is_listed(String section, String id) {
    assertThat(SECTIONS.get(section)).containsPattern("[\\[` ]" + id + "[\\]`,\\n]");
  }

  @ParameterizedTest
  @CsvSource({
    "Limits, camshaft-bushing.radial-play.max",
    "Rules, SLACK-ADJUSTER-010",
    "Inspection points, slack-adjuster.length-unlike-partner",
    "Inspection points, slack-adjuster.arm-length",
    "Cautions, advice-only",
    "Cautions, brake-dust",
    "Manuals cited as a whole, US-ARMY-TM-5-4210-220-12",
    "Manuals cited as a whole, US-49-CFR-393.53",
  })
  void is_not_listed(String section, String id) {
    assertThat(SECTIONS.get(section)).isNotBlank().doesNotContain("[" + id + "]", "`" + id + "`");
  }
}
