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

/** Constructs outside the rule language. */
class LanguageTest {

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
            crack == Sign.SEEN ~ crack == Sign.SEEN && flat == Sign.SEEN ~ 15:21 [condition-form] "crack == Sign.SEEN && flat == Sign.SEEN" is no condition of the rule language -> write a comma instead of &&
            crack == Sign.SEEN ~ crack == Sign.SEEN || flat ~ 15:21 [condition-form] "crack == Sign.SEEN || flat" is no condition of the rule language -> write property == Constant, several joined by ||, or $name : property
            crack == Sign.SEEN ~ crack in ( Sign.SEEN, Sign.NOT_SEEN ) ~ 15:21 [condition-form] "crack in ( Sign.SEEN, Sign.NOT_SEEN )" is no condition of the rule language -> write property == Constant, several joined by ||, or $name : property
            crack == Sign.SEEN ~ crack.name() == "SEEN" ~ 15:21 [condition-form] "crack.name() == "SEEN"" is no condition of the rule language -> write property == Constant, several joined by ||, or $name : property
            crack == Sign.SEEN ~ java.lang.Runtime.getRuntime() != null ~ 15:21 [condition-form] "java.lang.Runtime.getRuntime() != null" is no condition of the rule language -> write property == Constant, several joined by ||, or $name : property
            crack == Sign.SEEN ~ ( crack == Sign.SEEN ) == false ~ 15:21 [condition-form] "( crack == Sign.SEEN ) == false" is no condition of the rule language -> write property == Constant, several joined by ||, or $name : property
            crack == Sign.SEEN ~ this != null ~ 15:21 [condition-form] "this != null" is no condition of the rule language -> write property == Constant, several joined by ||, or $name : property
            crack == Sign.SEEN ~ crack == Sign.SEEN == true ~ 15:21 [condition-form] "crack == Sign.SEEN == true" is no condition of the rule language -> write property == Constant, several joined by ||, or $name : property
            crack == Sign.SEEN ~ $c : crack == Sign.SEEN ~ 15:21 [condition-form] "$c : crack == Sign.SEEN" is no condition of the rule language -> write property == Constant, several joined by ||, or $name : property
          """)
  void a_condition_outside_the_language_is_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            when\\n ~ when\\n  eval( true )\\n ~ 15:3 [forbidden-construct] eval does not belong to the rule language -> say it with patterns of parts, Brake, BeyondLimit, Replaced, Disturbed, UnlikePartner or ReadingsContradict; what must be counted or calculated is calculated before the rules run
            crack == Sign.SEEN ) ~ crack == Sign.SEEN ) from $x ~ 15:3 [forbidden-construct] from does not belong to the rule language -> say it with patterns of parts, Brake, BeyondLimit, Replaced, Disturbed, UnlikePartner or ReadingsContradict; what must be counted or calculated is calculated before the rules run
            when\\n ~ when\\n  accumulate( Drum( $w : wheelEnd ); $s : count($w) )\\n ~ 15:3 [forbidden-construct] accumulate does not belong to the rule language -> say it with patterns of parts, Brake, BeyondLimit, Replaced, Disturbed, UnlikePartner or ReadingsContradict; what must be counted or calculated is calculated before the rules run
            when\\n ~ when\\n  forall( Drum( ) )\\n ~ 15:3 [forbidden-construct] forall does not belong to the rule language -> say it with patterns of parts, Brake, BeyondLimit, Replaced, Disturbed, UnlikePartner or ReadingsContradict; what must be counted or calculated is calculated before the rules run
            when\\n ~ when\\n  exists Drum( )\\n ~ 15:3 [forbidden-construct] exists does not belong to the rule language -> leave the word exists out
            when\\n ~ when\\n  ( Drum( ) or Hub( ) )\\n ~ 15:5 [forbidden-construct] or does not belong to the rule language -> write one rule for each pattern; signs of one part may be joined by || in its brackets
            Camshaft( crack == Sign.SEEN ) ~ ( Camshaft( crack == Sign.SEEN ) or Camshaft( flat == Sign.SEEN ) ) ~ 15:3 [forbidden-construct] or does not belong to the rule language -> write one rule for each pattern; signs of one part may be joined by || in its brackets
            when\\n ~ when\\n  not( Drum( ) and Hub( ) )\\n ~ 15:3 [forbidden-construct] not over several patterns does not belong to the rule language -> write not before each pattern, without brackets
            when\\n ~ when\\n  /drums\\n ~ 15:3 [forbidden-construct] a path does not belong to the rule language -> say it with patterns of parts, Brake, BeyondLimit, Replaced, Disturbed, UnlikePartner or ReadingsContradict; what must be counted or calculated is calculated before the rules run
            Camshaft( crack == Sign.SEEN ) ~ Camshaft( crack == Sign.SEEN ) over window:length( 3 ) ~ 15:3 [forbidden-construct] over does not belong to the rule language -> say it with patterns of parts, Brake, BeyondLimit, Replaced, Disturbed, UnlikePartner or ReadingsContradict; what must be counted or calculated is calculated before the rules run
            when\\n ~ when\\n  $l : java.util.ArrayList( ) from collect( Drum( ) )\\n ~ 15:3 [forbidden-construct] collect does not belong to the rule language -> say it with patterns of parts, Brake, BeyondLimit, Replaced, Disturbed, UnlikePartner or ReadingsContradict; what must be counted or calculated is calculated before the rules run
          """)
  void a_construct_outside_the_language_is_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            $part : Camshaft( crack == Sign.SEEN )\\n ~ (nothing) ~ 14:1 [empty-conditions] there are no conditions, so the rule fires always -> write at least the part: $part : Camshaft( flat == Sign.SEEN )
            when\\n  $part : Camshaft( crack == Sign.SEEN )\\n ~ (nothing) ~ 10:1 [empty-conditions] there are no conditions, so the rule fires always -> write at least the part: $part : Camshaft( flat == Sign.SEEN )
          """)
  void conditions_that_always_hold_are_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            crack == ~ crack = ~ 15:27 [syntax] the rule cannot be read from "=" on -> write == to compare
            Sign.SEEN ) ~ Sign.SEEN ~ 16:1 [syntax] the rule cannot be read from "then" on -> close every bracket; there are 5 "(" and 4 ")"
            crack == Sign.SEEN ~ crack == Sign.SEEN flat == Sign.SEEN ~ 15:40 [syntax] the rule cannot be read from "flat" on -> look there or just before it for a missing comma, bracket or keyword; write rule, metadata, when, patterns, then, verdict, end, each once
            when\\n ~ when\\n  do[other]\\n ~ 15:5 [syntax] the rule cannot be read from "[" on -> look there or just before it for a missing comma, bracket or keyword; write rule, metadata, when, patterns, then, verdict, end, each once
          """)
  void a_rule_that_cannot_be_read_is_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(SIGN_RULE, written, instead)).containsExactly(problem);
  }

  @Test
  void commented_out_conditions_are_told() throws Exception {
    assertThat(rules.with(SIGN_RULE, "$part : Camshaft", "// $part : Camshaft"))
        .containsExactly(
            "14:1 [empty-conditions] the conditions are commented out, so the rule fires always"
                + " -> write at least the part: $part : Camshaft( flat == Sign.SEEN )",
            "15:3 [comment] a comment stands inside the rule"
                + " -> take it out; reasons belong into @because or into camshaft.md");
  }

  @Test
  void a_value_without_a_property_is_told() throws Exception {
    assertThat(rules.with(SIGN_RULE, "crack == Sign.SEEN", "Sign.SEEN;"))
        .contains(
            "15:21 [forbidden-construct] a value without a property does not belong to the rule"
                + " language -> write property == value, joined by commas");
  }

  @Test
  void a_second_then_is_told() throws Exception {
    assertThat(rules.with(SIGN_RULE, "end\n", "then[other]\n  verdict.hold( $part );\nend\n"))
        .containsExactly(
            "18:1 [syntax] the rule has a second then"
                + " -> write rule, metadata, when, patterns, then, verdict, end, each once");
  }

  @Test
  void one_broken_rule_does_not_hide_the_next() throws Exception {
    assertThat(
            rules.problemsOf(
                SIGN_RULE.replace("crack ==", "crack =")
                    + LIMIT_RULE.replace("end-play.max", "end-play.mx")))
        .containsExactly(
            "15:27 [syntax] the rule cannot be read from \"=\" on -> write == to compare",
            "24:25 [unknown-limit] there is no limit \"camshaft.end-play.mx\""
                + " -> write \"camshaft.end-play.max\"");
  }

  @Test
  void a_forgotten_end_is_told() throws Exception {
    assertThat(rules.problemsOf(SIGN_RULE.replace("end\n", "") + LIMIT_RULE))
        .containsExactly(
            "10:1 [syntax] the rule cannot be read to its end -> close the rule with \"end\"");
  }
}
