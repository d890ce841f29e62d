package org.brakerules.trial.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.brakerules.linter.internal.language.OpenWords;
import org.junit.jupiter.api.Test;

/** The linter knows every word that the list of what may stay open can begin with. */
class OpenWordsTest {

  @Test
  void every_side_of_a_limit_may_stay_open() {
    assertThat(OpenWords.ALL)
        .containsAll(Arrays.stream(Side.values()).map(side -> "limit-" + side.word()).toList());
  }
}
