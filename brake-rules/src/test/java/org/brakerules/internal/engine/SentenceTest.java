package org.brakerules.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentenceTest {

  private static final Map<String, String> VALUES =
      Map.of("part", "drum", "limit", "at most $1 {part}");

  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource({
    "The drum is cracked.,                 The drum is cracked.",
    "The {part} is cracked.,               The drum is cracked.",
    "{part},                               drum",
    "{part}{part},                         drumdrum",
    "Limit {limit}.,                       Limit at most $1 {part}.",
    "The {unknown} of the {part}.,         The {unknown} of the drum.",
    "No {} and no { part } and no {part,   No {} and no { part } and no {part",
  })
  void names_in_braces_are_filled_and_nothing_else(String text, String filled) {
    assertThat(filled(text)).isEqualTo(filled);
  }

  private static String filled(String text) {
    return new Sentence(text).filled(name -> Optional.ofNullable(VALUES.get(name)));
  }
}
