package org.brakerules.internal.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A limit as a share of the stroke marked on the chamber. */
class RatedShareTest {

  /** Cut to whole nanometres, on the strict side. */
  @ParameterizedTest
  @CsvSource({
    "80 %,   2.25 in,     1.80 in",
    "80 %,   2.5 in,      2.00 in",
    "80 %,   2 1/2 in,    2 in",
    "80 %,   64 mm,       51.2 mm",
    "80 %,   64.000001 mm, 51.2 mm",
    "100 %,  64.000001 mm, 64.000001 mm",
    "12.5 %, 2 in,        0.25 in",
  })
  void the_share_of_the_marked_stroke_is_exact(String share, String rated, String limit) {
    assertThat(parse(share).of(rated(Optional.of(rated)))).contains(Length.parse(limit));
  }

  @Test
  void a_stroke_that_is_not_stated_has_no_share() {
    assertThat(parse("80 %").of(rated(Optional.empty()))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "2 in", "80 %", "80 % of layout.drumDiameter", "80% of layout.chamber.type"})
  void another_cell_is_no_share_of_the_rated_stroke(String cell) {
    assertThat(RatedShare.parse(cell)).isEmpty();
  }

  @Test
  void a_share_that_is_no_number_is_refused() {
    assertThatThrownBy(() -> RatedShare.parse("most % of layout.chamber.ratedStroke"))
        .isInstanceOf(RuntimeException.class)
        .hasMessageContaining("most %");
  }

  private static RatedShare parse(String share) {
    return RatedShare.parse(share + " of layout.chamber.ratedStroke").orElseThrow();
  }

  private static Layout rated(Optional<String> stroke) {
    return Layout.of(CamshaftLayout.TUBE)
        .chamber(
            new ChamberSize(
                ChamberFamily.CLAMP, "30", StrokeClass.STANDARD, stroke.map(Length::parse), ""))
        .build();
  }
}
