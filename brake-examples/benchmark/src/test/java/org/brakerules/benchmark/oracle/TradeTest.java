package org.brakerules.benchmark.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.PartKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TradeTest {

  private static final Map<String, Verdict> RULES =
      BrakeRules.standard().rules().stream().collect(Collectors.toMap(Rule::id, Rule::verdict));

  @ParameterizedTest
  @EnumSource
  void every_kind_of_part_has_something_to_look_at_and_something_that_follows(PartKind kind) {
    assertThat(Trade.points(kind)).isNotEmpty();
    assertThat(Trade.sentences(kind)).isNotEmpty();
  }

  @Test
  void every_rule_stands_on_one_sentence() {
    assertThat(reasons().map(OracleReason::rule))
        .containsExactlyInAnyOrderElementsOf(RULES.keySet());
  }

  @Test
  void a_sentence_says_of_a_part_what_its_rule_says() {
    assertThat(reasons())
        .allSatisfy(reason -> assertThat(reason.verdict()).isEqualTo(RULES.get(reason.rule())));
  }

  @ParameterizedTest
  @EnumSource
  void a_sentence_asks_only_for_looks_that_are_points_of_the_part(PartKind kind) {
    List<Long> points = Trade.points(kind).stream().map(Point::bit).toList();

    assertThat(
            sentences()
                .flatMap(
                    sentence ->
                        sentence.effects().stream()
                            .filter(effect -> !effect.property().isEmpty())
                            .filter(
                                effect ->
                                    effect.target().orElse(sentence.subject()).kind() == kind))
                .map(Effect::asks))
        .isSubsetOf(points);
  }

  private static Stream<OracleReason> reasons() {
    return sentences().flatMap(one -> one.effects().stream()).map(Effect::reason);
  }

  /** Those on what is found, and those on what does not go back. */
  private static Stream<Sentence> sentences() {
    return Arrays.stream(PartKind.values())
        .flatMap(
            kind ->
                Stream.concat(
                    Trade.sentences(kind).stream(),
                    Stream.of(new Sentence(Subject.renewed(kind), Trade.consequences(kind)))));
  }
}
