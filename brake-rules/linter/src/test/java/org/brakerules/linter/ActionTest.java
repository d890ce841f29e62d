package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a rule says after then. */
class ActionTest {

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
            verdict.replace( $part ); ~ verdict.replace( $part );\\n  verdict.hold( $part ); ~ 17:3 [two-verdicts] the rule says 2 verdicts -> write one rule for each, with the same conditions
            verdict.replace( $part ); ~ (nothing) ~ 16:1 [action] the rule says nothing after then -> write one verdict of $part, such as verdict.replace( $part );
            verdict.replace( $part ); ~ System.out.println( $part ); ~ 17:3 [action] after then stands something else than one verdict -> write one verdict of $part, such as verdict.replace( $part );
            verdict.replace ~ verdict.replce ~ 17:11 [unknown-verdict] there is no verdict "replce" -> write "replace"
            verdict.replace( $part ); ~ verdict.replace( $camshaft ); ~ 17:3 [action] the verdict replace is not said in its form -> write verdict.replace( $part ); and nothing else
            verdict.replace( $part ); ~ verdict.lookAt( $part ); ~ 17:3 [action] the verdict lookAt is not said in its form -> write verdict.lookAt( $part, "component.point" ); and nothing else
            verdict.replace( $part ); ~ modify( $part ) { }; ~ 17:3 [fact-change] modify changes the facts of the job -> say one verdict; what follows from it rests on Replaced
            verdict.replace( $part ); ~ insert( $part ); ~ 17:3 [fact-change] insert changes the facts of the job -> say one verdict; what follows from it rests on Replaced
            verdict.replace( $part ); ~ kcontext.getKnowledgeRuntime().halt(); ~ 17:3 [action] after then stands something else than one verdict -> write one verdict of $part, such as verdict.replace( $part );
          """)
  void anything_but_one_verdict_of_the_part_is_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            verdict.replace( $part ); ~ verdict.lookAt( $part, "camshaft.crak" ); ~ 17:26 [unknown-point] there is no inspection point "camshaft.crak" -> write "camshaft.crack"
            verdict.replace( $part ); ~ verdict.lookAt( $part, "drum.soaked" ); ~ 17:26 [point-of-another-part] "drum.soaked" is no point of the camshaft, which $part is -> name a point of the camshaft, or let $part be the part the point is of
          """)
  void a_point_that_cannot_be_looked_at_is_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            $part : Camshaft ~ Camshaft ~ 14:1 [action] no pattern names $part -> write $part : before the one pattern of the part that the verdict is of
            $part : Camshaft( crack == Sign.SEEN ) ~ $part : Brake( camshaft == CamshaftLayout.TUBE ) ~ 15:3 [action] Brake is no part, so no verdict can be said of it -> write $part : before a pattern of a part
            $part : Camshaft( crack == Sign.SEEN ) ~ $part : Camshaft( crack == Sign.SEEN, $wheelEnd : wheelEnd )\\n  $part : Drum( wheelEnd == $wheelEnd ) ~ 14:1 [action] $part is named twice -> write $part : before the one pattern of the part that the verdict is of
          """)
  void a_rule_that_speaks_of_no_part_is_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @Test
  void a_number_after_then_is_told() throws Exception {
    assertThat(rules.with(SIGN_RULE, "replace( $part )", "replace( $part, 2 )"))
        .contains(
            "17:27 [number] the number 2 stands after then"
                + " -> take it out; a verdict has no number");
  }

  @Test
  void every_verdict_of_the_language_is_known() throws Exception {
    assertThat(rules.with(SIGN_RULE, "replace( $part )", "lookAt( $part, \"camshaft.crack\" )"))
        .isEmpty();
    assertThat(
            rules.with(
                SIGN_RULE, "replace( $part )", "measureAgain( $part, \"camshaft.end-play\" )"))
        .isEmpty();
    assertThat(rules.with(SIGN_RULE, "replace", "hold")).isEmpty();
    assertThat(rules.with(SIGN_RULE, "replace", "clean")).isEmpty();
    assertThat(rules.with(SIGN_RULE, "replace", "adjust")).isEmpty();
  }
}
