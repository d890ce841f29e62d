package org.brakerules.model.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a kit and a shelf refuse. */
class KitShelfTest {

  private static final Optional<Currency> EUR = Optional.of(Currency.getInstance("EUR"));

  @Test
  void price_of_as_many_decimals_as_its_currency_has_is_taken_and_one_more_is_not() {
    assertThat(new KitShelf("", EUR, List.of(kit("A", 1, "1.50", "FF"))).kits()).hasSize(1);
    assertThat(new KitShelf("", EUR, List.of(kit("A", 1, "1.500", ""))).kits()).hasSize(1);
    assertThatThrownBy(() -> new KitShelf("", EUR, List.of(kit("A", 1, "1.505", ""))))
        .hasMessage("The price of kit A has more decimals than EUR.");
    assertThatThrownBy(
            () ->
                new KitShelf(
                    "", Optional.of(Currency.getInstance("JPY")), List.of(kit("A", 1, "1.5", ""))))
        .hasMessage("The price of kit A has more decimals than JPY.");
  }

  @Test
  void price_without_a_currency_and_two_kits_of_one_id_are_refused() {
    assertThatThrownBy(() -> new KitShelf("", Optional.empty(), List.of(kit("A", 1, "1", ""))))
        .hasMessage("Kit A has a price and no currency.");
    assertThatThrownBy(
            () -> new KitShelf("", EUR, List.of(kit("A", 1, "1", ""), kit("A", 2, "2", ""))))
        .hasMessage("Two kits of the shelf have one id.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          =A | 1   | 1       | FF  | No name of a kit: "=A"; write letters, digits, dots, hyphens and underscores, 40 at most
          A  | 0   | 1       | FF  | A count of kit A is not 1 to 99
          A  | 100 | 1       | FF  | A count of kit A is not 1 to 99
          A  | 1   | -0.01   | FF  | The price of kit A is not 0 to 1000000.
          A  | 1   | 1000001 | FF  | The price of kit A is not 0 to 1000000.
          A  | 1   | 1       | FFF | No friction code: "FFF"; write its two letters, such as FF
          """)
  void kit_that_cannot_be_is_refused(
      String id, int count, String price, String code, String message) {
    assertThatThrownBy(() -> kit(id, count, price, code))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  private static Kit kit(String id, int count, String price, String code) {
    return new Kit(
        id,
        "clips",
        KitReach.PIECE,
        Map.of("roller-clip", count),
        Optional.of(new BigDecimal(price)),
        code);
  }
}
