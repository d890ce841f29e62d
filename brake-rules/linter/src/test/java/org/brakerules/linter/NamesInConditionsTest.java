package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits, facts, properties, constants and variables that do not exist. */
class NamesInConditionsTest {

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws Exception {
    rules = new SmallRuleBase(folder);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            crack == ~ crak == ~ 15:21 [unknown-property] Camshaft has no property "crak" -> write "crack"
            crack == Sign.SEEN ~ crack == Sign.SEEN, $x : foo ~ 15:46 [unknown-property] Camshaft has no property "foo" -> see the record Camshaft for its properties
            Sign.SEEN ~ Sign.SEN ~ 15:35 [unknown-constant] Sign has no "SEN" -> write "SEEN"
            Sign.SEEN ~ Sing.SEEN ~ 15:30 [unknown-constant] there is no "Sing" to choose SEEN from -> write "Sign"
            Camshaft( crack ~ Camshft( crack ~ 15:11 [unknown-type] "Camshft" is no fact of the job -> write "Camshaft"
            Camshaft( crack ~ org.brakerules.model.part.Camshaft( crack ~ 15:11 [qualified-type] org.brakerules.model.part.Camshaft is written with its package -> write "Camshaft"
            Camshaft( crack ~ java.lang.Runtime( crack ~ 15:11 [qualified-type] java.lang.Runtime is written with its package -> name a part, such as CamshaftBushing, or Brake, BeyondLimit, Replaced, Disturbed, UnlikePartner or ReadingsContradict
            crack == Sign.SEEN ~ station == $station, crack == Sign.SEEN ~ 15:32 [unknown-variable] $station is not named by any pattern before -> name it in a pattern before: $station : property
          """)
  void an_unknown_name_is_told_with_the_nearest(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            camshaft.end-play.max ~ camshaft.endplay.max ~ 15:25 [unknown-limit] there is no limit "camshaft.endplay.max" -> write "camshaft.end-play.max"
            camshaft.end-play.max ~ foo ~ 15:25 [unknown-limit] there is no limit "foo" -> write "camshaft.end-play.max"
            limit == "camshaft.end-play.max", ~ (nothing) ~ 15:3 [unnamed-limit] BeyondLimit does not say which limit, so any reading beyond any limit would do -> write BeyondLimit( limit == "component.property.max", ... )
          """)
  void an_unknown_limit_is_told_with_the_nearest(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(LIMIT_RULE, written, instead)).containsExactly(problem);
  }
}
