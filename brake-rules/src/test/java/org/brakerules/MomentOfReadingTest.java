package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Some readings count only before the work, some only after it. */
class MomentOfReadingTest {

  @ParameterizedTest(name = "{0} in, {1}: {2}")
  @CsvSource({
    "0.003 in, AFTER_WORK, REUSE",
    "0.005 in, AFTER_WORK, REUSE",
    "0.003 in, AS_FOUND,   UNDECIDED",
    "0.003 in, UNKNOWN,    UNDECIDED",
  })
  void the_end_play_of_a_hub_counts_after_the_work_alone(
      String value, Moment taken, Disposition expected) {
    assertThat(endPlay(value, taken).disposition()).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "AS_FOUND, measured as 0.003 in by dial indicator as found",
    "UNKNOWN,  measured as 0.003 in by dial indicator at a moment not stated",
  })
  void the_moment_that_was_wrong_is_named(Moment taken, String measured) {
    assertThat(needed(endPlay("0.003 in", taken)).why())
        .isEqualTo(measured + ", which is no reading of this limit");
  }

  @ParameterizedTest
  @EnumSource(
      value = Moment.class,
      names = {"AS_FOUND", "UNKNOWN"})
  void the_moment_that_is_right_is_named_as_a_condition(Moment taken) {
    assertThat(needed(endPlay("0.003 in", taken)).conditions()).containsExactly("after the work");
  }

  private static Decision endPlay(String value, Moment taken) {
    Reading<Length> reading =
        Reading.of(Length.parse(value), Station.WHOLE_PART, Method.DIAL_INDICATOR);
    return SoundBrake.tube()
        .withHub()
        .measured("hub", "endPlay", reading.taken(taken))
        .decision("hub");
  }

  private static Needed needed(Decision hub) {
    return hub.needed().stream()
        .filter(one -> one.point().equals("hub.end-play"))
        .findFirst()
        .orElseThrow();
  }
}
