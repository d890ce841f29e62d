package org.brakerules.model.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The friction code that is marked on the edge of a lining. */
class FrictionCodeTest {

  private static final LiningBuilder LINING =
      Lining.asFound(WheelEndPath.of(2, Side.LEFT), Station.UPPER);

  @Test
  void code_is_not_stated_unless_somebody_states_it() {
    assertThat(LINING.build().frictionCode()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"F", "ff", "F1", "FFF", " FF"})
  void anything_but_two_letters_is_refused(String code) {
    assertThatThrownBy(
            () ->
                Lining.asFound(WheelEndPath.of(2, Side.LEFT), Station.UPPER)
                    .frictionCode(code)
                    .build())
        .hasMessage("No friction code: \"" + code + "\"; write its two letters, such as FF");
  }
}
