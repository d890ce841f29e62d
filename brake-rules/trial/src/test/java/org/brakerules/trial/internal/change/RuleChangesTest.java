package org.brakerules.trial.internal.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.linter.internal.base.RuleBaseReader;
import org.brakerules.trial.internal.written.WrittenRules;
import org.junit.jupiter.api.Test;

/** Every slip of an author's pen is a change that is tried. */
class RuleChangesTest {

  private static final Path RESOURCES = Path.of("../src/main/resources");
  private static final Names NAMES =
      new Names(
          List.of("drum.out-of-round.max", "drum.taper.max", "hub.end-play.max"),
          List.of("drum.clean-up-diameter", "drum.diameter", "hose.leak"));

  @Test
  void a_rule_on_a_limit_is_changed_in_its_limit_its_joins_its_selectors_and_its_verdict()
      throws IOException {
    assertThat(changesOf("DRUM-030"))
        .containsExactly(
            "BeyondLimit( limit == \"drum.out-of-round.max\", $wheelEnd : wheelEnd ) left out",
            "limit == \"drum.out-of-round.max\" in BeyondLimit left out",
            "limit == \"drum.out-of-round.max\" in BeyondLimit became"
                + " limit != \"drum.out-of-round.max\"",
            "limit == \"drum.out-of-round.max\" in BeyondLimit became limit == \"drum.taper.max\"",
            "wheelEnd == $wheelEnd in Drum left out",
            "wheelEnd == $wheelEnd in Drum became wheelEnd != $wheelEnd",
            "wheelEnd == $wheelEnd in Drum became partner == $wheelEnd",
            "condition == Condition.AS_FOUND in Drum left out",
            "condition == Condition.AS_FOUND in Drum became condition != Condition.AS_FOUND",
            "condition == Condition.AS_FOUND in Drum became condition == Condition.NEW",
            "verdict.adjust( $part ) became verdict.replace( $part )",
            "verdict.adjust( $part ) became verdict.clean( $part )",
            "verdict.adjust( $part ) became verdict.hold( $part )");
  }

  @Test
  void alternatives_are_left_out_one_by_one_and_a_sign_is_given_each_other_state()
      throws IOException {
    assertThat(changesOf("HOSE-010"))
        .containsExactly(
            "chafed == Sign.SEEN || bulging == Sign.SEEN in Hose left out",
            "chafed == Sign.SEEN in Hose left out",
            "chafed == Sign.SEEN in Hose became chafed != Sign.SEEN",
            "chafed == Sign.SEEN in Hose became chafed == Sign.NOT_SEEN",
            "chafed == Sign.SEEN in Hose became chafed == Sign.NOT_CHECKED",
            "bulging == Sign.SEEN in Hose left out",
            "bulging == Sign.SEEN in Hose became bulging != Sign.SEEN",
            "bulging == Sign.SEEN in Hose became bulging == Sign.NOT_SEEN",
            "bulging == Sign.SEEN in Hose became bulging == Sign.NOT_CHECKED",
            "verdict.replace( $part ) became verdict.clean( $part )",
            "verdict.replace( $part ) became verdict.adjust( $part )",
            "verdict.replace( $part ) became verdict.hold( $part )");
  }

  @Test
  void a_question_is_changed_into_the_other_question_and_to_the_next_point() throws IOException {
    assertThat(changesOf("DRUM-390"))
        .contains(
            "verdict.measureAgain( $part, drum.diameter ) became"
                + " verdict.lookAt( $part, drum.diameter )",
            "verdict.measureAgain( $part, drum.diameter ) became"
                + " verdict.measureAgain( $part, drum.clean-up-diameter )");
  }

  @Test
  void a_pattern_that_is_left_out_takes_the_joins_to_it_with_it() throws IOException {
    Change first = RuleChanges.of(rule("DRUM-030"), NAMES).get(0);

    assertThat(first.rule().patterns())
        .singleElement()
        .hasToString("Drum( condition == Condition.AS_FOUND )");
  }

  private static List<String> changesOf(String id) throws IOException {
    return RuleChanges.of(rule(id), NAMES).stream().map(Change::words).toList();
  }

  private static WrittenRule rule(String id) throws IOException {
    return RuleBaseReader.read(RESOURCES)
        .rules()
        .filter(rule -> rule.id().equals(id))
        .map(WrittenRules::of)
        .findFirst()
        .orElseThrow();
  }
}
