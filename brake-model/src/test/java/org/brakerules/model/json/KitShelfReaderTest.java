package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.model.kit.Kit;
import org.brakerules.model.kit.KitReach;
import org.brakerules.model.kit.KitShelf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shelf of kits in JSON, and what a shop reads when it is written wrong. */
class KitShelfReaderTest {

  private static final KitShelfReader READER =
      new KitShelfReader(List.of("shoe-with-lining", "cam-roller", "roller-clip"));

  private static final String SHELF =
      """
      { "shelf": "Harrowmere counter", "currency": "EUR",
        "kits": [
          { "id": "HY-1", "title": "Shoes", "for": "wheel-end", "price": 148.5,
            "frictionCode": "FF",
            "contents": [ { "item": "shoe-with-lining", "count": 2 },
              { "item": "roller-clip", "count": 2 } ] },
          { "id": "HY-2", "title": "One clip", "for": "piece",
            "contents": [ { "item": "roller-clip", "count": 1 } ] } ] }
      """;

  @Test
  void shelf_is_read_as_it_is_written() {
    assertThat(READER.read(SHELF))
        .isEqualTo(
            new KitShelf(
                "Harrowmere counter",
                Optional.of(Currency.getInstance("EUR")),
                List.of(
                    new Kit(
                        "HY-1",
                        "Shoes",
                        KitReach.WHEEL_END,
                        Map.of("shoe-with-lining", 2, "roller-clip", 2),
                        Optional.of(new BigDecimal("148.5")),
                        "FF"),
                    new Kit(
                        "HY-2",
                        "One clip",
                        KitReach.PIECE,
                        Map.of("roller-clip", 1),
                        Optional.empty(),
                        ""))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "currency": "EUR"        | "currency": "EURO"       | line 1, column 46, /currency: found "EURO", expected a currency by its three letters, such as "EUR"
          , "currency": "EUR"      | ``                       | line 3, column 68, /kits/0/price: found 148.5, expected no price, or a "currency" beside the kits, such as "EUR"
          148.5                    | 148.505                  | line 3, column 68, /kits/0/price: found 148.505, expected a price from 0 to 1000000 without quotes and unit, with 2 decimals at most as EUR has
          148.5                    | "148.50"                 | line 3, column 68, /kits/0/price: found "148.50", expected a price from 0 to 1000000 without quotes and unit, with 2 decimals at most as EUR has
          148.5                    | -1                       | line 3, column 68, /kits/0/price: found -1, expected a price from 0 to 1000000 without quotes and unit, with 2 decimals at most as EUR has
          "for": "wheel-end"       | "for": "wheel end"       | line 3, column 46, /kits/0/for: found "wheel end", expected "wheel-end", the nearest known name
          "id": "HY-2"             | "id": "HY-1"             | line 7, column 5, /kits/1: found a second kit HY-1, the first is at line 3, column 5, expected each kit once, with an id of its own
          "id": "HY-2"             | "id": "=HY(2)"           | line 7, column 13, /kits/1/id: found "=HY(2)", expected the name of the kit in letters, digits, dots, hyphens and underscores, such as "HY-RELINE-D"
          "FF"                     | "ff"                     | line 4, column 23, /kits/0/frictionCode: found "ff", expected the two letters of the code, such as "FF"
          "item": "shoe-with-lining" | "item": "shoes-with-lining" | line 5, column 31, /kits/0/contents/0/item: found "shoes-with-lining", expected "shoe-with-lining", the nearest known item
          "item": "shoe-with-lining" | "item": "carburettor"  | line 5, column 31, /kits/0/contents/0/item: found "carburettor", expected the id of an item, such as "roller-clip"
          "item": "shoe-with-lining" | "item": "roller-clip"  | line 6, column 9, /kits/0/contents/1: found a second roller-clip, the first is at line 5, column 21, expected each item once, with its count
          "count": 1               | "count": 0               | line 8, column 55, /kits/1/contents/0/count: found 0, expected a whole number from 1 to 99, without quotes
          "title": "One clip"      | "titel": "One clip"      | line 7, column 5, /kits/1: found no "title", expected what the kit is, in words
          """)
  void what_is_written_wrong_is_told_with_its_place(String written, String change, String message) {
    assertThat(problems(SHELF.replace(written, change))).contains(message);
  }

  @Test
  void empty_shelf_and_more_after_its_end_are_refused() {
    assertThat(problems("{ \"kits\": [] }"))
        .containsExactly(
            "line 1, column 11, /kits: found an empty array, expected an array of kits");
    assertThat(problems(SHELF + "{}"))
        .singleElement()
        .asString()
        .endsWith("expected nothing after the end of the shelf");
  }

  private static List<String> problems(String shelf) {
    InvalidShelfException refused =
        catchThrowableOfType(InvalidShelfException.class, () -> READER.read(shelf));
    assertThat(refused).as("refused").isNotNull();
    return refused.problems().stream().map(Problem::message).toList();
  }
}
