package org.brakerules.model.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChamberSizeTest {

  @ParameterizedTest
  @ValueSource(strings = {"", "6", "30", "31", "A", "G"})
  void a_type_is_written_as_it_is_marked(String type) {
    assertThat(size(type).type()).isEqualTo(type);
  }

  @ParameterizedTest
  @ValueSource(strings = {"T16", "16L", "type 30", "b", "300", " 30"})
  void a_type_that_no_chamber_is_marked_with_is_refused(String type) {
    assertThatThrownBy(() -> size(type))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("No type of a chamber: \"" + type + "\"; write it as marked, such as 30 or B");
  }

  private static ChamberSize size(String type) {
    return new ChamberSize(ChamberFamily.CLAMP, type, StrokeClass.STANDARD, Optional.empty(), "");
  }
}
