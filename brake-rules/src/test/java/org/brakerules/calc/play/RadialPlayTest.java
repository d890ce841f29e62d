package org.brakerules.calc.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.brakerules.calc.LengthText;
import org.brakerules.model.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;

class RadialPlayTest {

  /** Values of check case C06, TM 5-4210-220-12 para 4-30.4; the whole movement is the play. */
  @ParameterizedTest
  @CsvSource({"0.021 in", "0.012 in", "0 in", "0.66 mm"})
  void the_whole_movement_of_the_dial_is_the_play(@ConvertWith(LengthText.class) Length movement) {
    assertThat(RadialPlay.byDial(movement).play()).isEqualTo(movement);
  }

  @ParameterizedTest(name = "bore {0}, journal {1}: play {2}")
  @CsvSource({
    "1.521 in, 1.500 in, 0.021 in",
    "1.500 in, 1.500 in, 0 in",
    "1.5 in, 38.0 mm, 0.1 mm",
  })
  void bore_less_journal_is_the_play(
      @ConvertWith(LengthText.class) Length bore,
      @ConvertWith(LengthText.class) Length journal,
      @ConvertWith(LengthText.class) Length play) {
    assertThat(RadialPlay.byDiameters(bore, journal).play()).isEqualTo(play);
  }

  @Test
  void a_journal_that_does_not_go_into_the_bore_was_misread() {
    assertThatThrownBy(() -> RadialPlay.byDiameters(inches("1.499"), inches("1.500")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("measure both again");
  }

  @ParameterizedTest(name = "bore {0}, journal {1}: bushing lost {2}, journal lost {3}")
  @CsvSource({
    "1.521, 1.494, 0.016, 0.004",
    "1.505, 1.498, 0,     0",
    "1.504, 1.490, -0.001, 0.008",
  })
  void new_sizes_tell_whose_wear_it_is(
      String bore, String journal, String bushingWear, String journalWear) {
    PlayShare share = PlayShare.of(inches(bore), inches(journal), inches("1.505"), inches("1.498"));
    assertThat(share.whenNew()).isEqualTo(inches("0.007"));
    assertThat(share.bushingWear()).isEqualTo(inches(bushingWear));
    assertThat(share.journalWear()).isEqualTo(inches(journalWear));
    assertThat(share.play())
        .isEqualTo(RadialPlay.byDiameters(inches(bore), inches(journal)).play());
  }

  @Test
  void without_the_sizes_of_new_parts_each_is_asked_for() {
    Optional<Length> known = Optional.of(inches("1.5"));
    String bore = "bore of a new bushing, by the maker";
    String journal = "journal of a new camshaft, by the maker";
    assertThat(PlayShare.unknown(Optional.empty(), Optional.empty()).missing())
        .containsExactly(bore, journal);
    assertThat(PlayShare.unknown(known, Optional.empty()).missing()).containsExactly(journal);
    assertThat(PlayShare.unknown(Optional.empty(), known).missing()).containsExactly(bore);
  }

  @Test
  void play_in_four_directions_shows_wear_to_one_side() {
    OneSidedWear wear =
        OneSidedWear.of(
            new PlayInFourDirections(
                inches("0.018"), inches("0.031"), inches("0.016"), inches("0.012")));
    assertThat(wear.most()).isEqualTo(PlayDirection.UP_IN_FRONT);
    assertThat(wear.least()).isEqualTo(PlayDirection.DOWN_IN_FRONT);
    assertThat(wear.difference()).isEqualTo(inches("0.019"));
  }

  @Test
  void equal_play_all_round_is_no_wear_to_one_side() {
    Length same = inches("0.018");
    OneSidedWear wear = OneSidedWear.of(new PlayInFourDirections(same, same, same, same));
    assertThat(wear.difference()).isEqualTo(inches("0"));
  }

  private static Length inches(String number) {
    return number.startsWith("-")
        ? Length.inches("0").minus(Length.inches(number.substring(1)))
        : Length.inches(number);
  }
}
