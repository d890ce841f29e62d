package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
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

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          verdict.clean( $part ); verdict.replace( $part ); ~ 2 verdicts -> keep verdict.replace( $part ); take verdict.clean( $part ) out
          verdict.clean( $part ); verdict.adjust( $part ); ~ 2 verdicts -> keep verdict.adjust( $part ); take verdict.clean( $part ) out
          verdict.replace( $part ); verdict.replace( $part ); ~ 2 verdicts -> keep verdict.replace( $part ); take verdict.replace( $part ) out
          verdict.clean( $part ); verdict.replace( $part ); verdict.adjust( $part ); ~ 3 verdicts -> keep verdict.replace( $part ); take verdict.clean( $part ) out; take verdict.adjust( $part ) out
          verdict.clean( $part ); verdict.hold( $part ); ~ 2 verdicts -> keep verdict.clean( $part ); give verdict.hold( $part ) a rule of its own with the same conditions, CAMSHAFT-030, at the end of the file
          verdict.replace( $part ); verdict.replce( $part ); ~ 2 verdicts -> keep verdict.replace( $part ); take verdict.replce( $part ) out
          verdict.replace( $drum ); verdict.clean( $part ); ~ 2 verdicts -> keep verdict.clean( $part ); give verdict.replace( $drum ) a rule of its own with the same conditions, CAMSHAFT-030, at the end of the file, and let $part name there what $drum names here
          verdict.replace( $part ); verdict.hold( $part ); verdict.hold( $drum ); ~ 3 verdicts -> keep verdict.replace( $part ); give verdict.hold( $part ) a rule of its own with the same conditions, CAMSHAFT-030, at the end of the file; give verdict.hold( $drum ) a rule of its own with the same conditions, CAMSHAFT-040, at the end of the file, and let $part name there what $drum names here
          """)
  void several_verdicts_are_told_with_the_one_to_keep(String verdicts, String problem)
      throws Exception {
    String several = SIGN_RULE.replace("verdict.replace( $part );", verdicts);
    assertThat(rules.problemsOf(several + LIMIT_RULE))
        .containsExactly("17:3 [two-verdicts] the rule says " + problem);
  }

  @Test
  void verdicts_set_apart_as_told_are_sound() throws Exception {
    String hold = SIGN_RULE.replace("replace(", "hold(").replace("-010", "-030");
    assertThat(rules.problemsOf(SIGN_RULE + LIMIT_RULE + hold)).isEmpty();
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
