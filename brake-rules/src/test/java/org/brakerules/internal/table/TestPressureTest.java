package org.brakerules.internal.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakerules.model.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The band of reservoir pressure for applied strokes. */
class TestPressureTest {

  private static final TestPressure BAND =
      new TestPressure(Pressure.parse("80 psi"), Pressure.parse("90 psi"));

  @ParameterizedTest
  @CsvSource({
    "79.999 psi, false",
    "80 psi,     true",
    "90 psi,     true",
    "90.001 psi, false",
    "551 kPa,    false",
    "552 kPa,    true",
    "6.2 bar,    true",
    "6.3 bar,    false",
  })
  void both_ends_belong_to_the_band(String pressure, boolean covered) {
    assertThat(BAND.covers(Pressure.parse(pressure))).isEqualTo(covered);
  }

  @Test
  void the_band_is_said_in_words() {
    assertThat(BAND.inWords()).isEqualTo("at a reservoir pressure from 80 psi to 90 psi");
  }
}
