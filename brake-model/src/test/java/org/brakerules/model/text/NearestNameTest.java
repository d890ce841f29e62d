package org.brakerules.model.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {

  private static final Set<String> PARTS =
      Set.of("camshaft", "camshaft-bushing", "slack-adjuster", "push-rod", "drum", "shoe");

  @ParameterizedTest
  @CsvSource({
    "camshaft,         camshaft",
    "CamShaft,         camshaft",
    "camshafts,        camshaft",
    "camshft,          camshaft",
    "camshatf,         camshaft",
    "comshoft,         camshaft",
    "camshaftBushing,  camshaft-bushing",
    "camshaft_bushing, camshaft-bushing",
    "camshaft bushing, camshaft-bushing",
    "slackadjustor,    slack-adjuster",
    "pushrod,          push-rod",
    "durm,             drum",
    "shoes,            shoe",
  })
  void a_slip_finds_its_name(String written, String name) {
    assertThat(NearestName.of(written, PARTS)).contains(name);
  }

  @ParameterizedTest
  @CsvSource({"wheel", "cam", "dr", "''", "---", "shaft"})
  void what_is_more_than_a_third_wrong_has_no_nearest_name(String written) {
    assertThat(NearestName.of(written, PARTS)).isEmpty();
  }

  @Test
  void of_equally_near_names_the_first_in_the_alphabet_is_taken() {
    assertThat(NearestName.of("shim-c", List.of("shim-b", "shim-a"))).contains("shim-a");
  }

  @Test
  void nothing_is_near_when_nothing_is_known() {
    assertThat(NearestName.of("drum", List.of())).isEmpty();
  }

  @Test
  void a_very_long_text_has_no_nearest_name() {
    assertThat(NearestName.of("x".repeat(1_000_000), PARTS)).isEmpty();
  }
}
