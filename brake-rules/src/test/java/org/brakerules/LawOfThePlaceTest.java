package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.part.Sign;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A law of another place is cited, and is not shown as law. */
class LawOfThePlaceTest {

  @ParameterizedTest
  @CsvSource({
    "us-federal, return-spring, broken, US-49-CFR-396-APP-A, LAW",
    "quebec,     return-spring, broken, US-49-CFR-396-APP-A, LAW_ELSEWHERE",
    "us-virginia, return-spring, broken, US-49-CFR-396-APP-A, LAW_ELSEWHERE",
    "us-federal, hose,          chafed, MAINE-16-222-CH-1,   LAW_ELSEWHERE",
    "quebec,     hose,          chafed, MAINE-16-222-CH-1,   LAW_ELSEWHERE"
  })
  void a_law_stands_as_law_under_its_own_rule_set_only(
      String ruleSet, String part, String sign, String source, Standing standing) {
    assertThat(sources(SoundBrake.tube().ruleSet(ruleSet).with(part, sign, Sign.SEEN), part))
        .filteredOn(one -> one.id().equals(source))
        .isNotEmpty()
        .extracting(Source::standing)
        .containsOnly(standing);
  }

  @Test
  void what_is_no_law_stands_alike_everywhere() {
    SoundBrake chafed = SoundBrake.tube().with("hose", "chafed", Sign.SEEN);

    assertThat(sources(chafed.ruleSet("quebec"), "hose"))
        .extracting(Source::standing)
        .contains(Standing.COMMON_PRACTICE);
  }

  private static Stream<Source> sources(SoundBrake brake, String part) {
    return brake.decision(part).reasons().stream().flatMap(reason -> reason.source().stream());
  }
}
