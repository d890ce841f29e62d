package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nothing is concluded from what nobody looked at. */
class NegationTest {

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
            $part : Camshaft( crack == Sign.SEEN ) ~ $part : Camshaft( crack == Sign.SEEN, $wheelEnd : wheelEnd )\\n  not Replaced( wheelEnd == $wheelEnd ) ~ 16:3 [negated-fact] not stands before Replaced; that nothing was found proves nothing -> use not before a part or Brake only; say what was found instead
            $part : Camshaft( crack == Sign.SEEN ) ~ $part : Camshaft( crack == Sign.SEEN, $wheelEnd : wheelEnd )\\n  not CamRoller( wheelEnd == $wheelEnd, flat == Sign.SEEN ) ~ 16:41 [negated-sign] under not, flat would count as not seen although nobody may have looked -> use not only to say that a part or a kind of brake is not there
            crack == Sign ~ crack != Sign ~ 15:21 [negated-sign] crack != would also hold where nobody looked -> write crack == Sign.SEEN
            Sign.SEEN ~ Sign.NOT_SEEN ~ 15:21 [negated-sign] crack is a sign of a fault, and a fault that is not seen is no finding -> write crack == Sign.SEEN; NOT_SEEN is for points that find something good (finds = good)
            Sign.SEEN ~ Sign.NOT_CHECKED ~ 15:21 [negated-sign] a rule may not rest on a look that was left out -> leave it out; a part is undecided until every point is looked at
            crack == Sign.SEEN ~ !( crack == Sign.SEEN ) ~ 15:21 [negated-sign] ! also holds where nobody looked -> say what was seen: property == Sign.SEEN
          """)
  void a_negation_is_told(String written, String instead, String problem) throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @Test
  void a_good_sign_that_is_missing_is_a_finding() throws Exception {
    assertThat(rules.with(SIGN_RULE, "crack == Sign.SEEN", "turnsFreely == Sign.NOT_SEEN"))
        .isEmpty();
  }

  @Test
  void a_brake_of_another_kind_may_be_excluded() throws Exception {
    assertThat(
            rules.with(
                SIGN_RULE,
                "crack == Sign.SEEN )",
                "crack == Sign.SEEN, $wheelEnd : wheelEnd )\n"
                    + "  not Brake( wheelEnd == $wheelEnd, camshaft == CamshaftLayout.TUBE )"))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"BeyondLimit", "Replaced", "Disturbed"})
  void the_absence_of_a_finding_is_no_condition(String fact) throws Exception {
    String limit = fact.equals("BeyondLimit") ? ", limit == \"camshaft.end-play.max\"" : "";
    assertThat(
            rules.with(
                SIGN_RULE,
                "crack == Sign.SEEN )",
                "crack == Sign.SEEN, $wheelEnd : wheelEnd )\n"
                    + "  not %s( wheelEnd == $wheelEnd%s )".formatted(fact, limit)))
        .containsExactly(
            "16:3 [negated-fact] not stands before "
                + fact
                + "; that nothing was found proves nothing"
                + " -> use not before a part or Brake only; say what was found instead");
  }
}
