package org.brakerules.harness.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.part.Place;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every row of every limit table that has a value, with readings on both sides of its limit. The
 * others have their cases beside the rules.
 */
class LimitCasesTest {

  private static final BrakeRules RULES = BrakeRules.standard();

  private record Answer(Disposition disposition, boolean hold, List<String> rules) {}

  @ParameterizedTest(name = "{0}")
  @MethodSource("limitCases")
  void reading_near_a_limit_is_judged_by_the_side_it_lies_on(LimitCase one) {
    JobDecision decision = RULES.decide(one.job());

    CheckStatus expected = one.passes() ? CheckStatus.WITHIN : CheckStatus.BEYOND;
    assertThat(statuses(decision, one)).containsExactly(expected);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("limits")
  void reading_beyond_a_limit_changes_what_becomes_of_the_brake(Limit limit) {
    LimitCase inside = first(limit, true);
    LimitCase beyond = first(limit, false);

    assertThat(answers(RULES.decide(beyond.job())))
        .isNotEqualTo(answers(RULES.decide(inside.job())));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("limits")
  void reading_that_was_not_taken_lies_on_no_side(Limit limit) {
    LimitCase one = first(limit, true);

    assertThat(statuses(RULES.decide(one.jobWithoutReading()), one)).isEmpty();
  }

  static Stream<LimitCase> limitCases() {
    return limits().flatMap(LimitCases::of);
  }

  static Stream<Limit> limits() {
    return RULES.limits().stream().filter(limit -> limit.value().isPresent());
  }

  private static LimitCase first(Limit limit, boolean passes) {
    return LimitCases.of(limit).filter(one -> one.passes() == passes).findFirst().orElseThrow();
  }

  private static List<CheckStatus> statuses(JobDecision decision, LimitCase one) {
    return decision.decisions().stream()
        .flatMap(LimitCasesTest::checks)
        .filter(check -> check.limitId().equals(one.limit().id()))
        .filter(check -> check.part().toString().endsWith("/" + one.path()))
        .map(Check::status)
        .distinct()
        .toList();
  }

  private static Stream<Check> checks(Decision decision) {
    Stream<Check> measured =
        decision.reasons().stream()
            .flatMap(reason -> reason.evidence().stream())
            .filter(Evidence.Measured.class::isInstance)
            .map(evidence -> ((Evidence.Measured) evidence).check());
    return Stream.concat(decision.passed().stream(), measured);
  }

  private static Map<Place, Answer> answers(JobDecision decision) {
    return decision.decisions().stream()
        .collect(
            Collectors.toMap(
                Decision::part,
                one ->
                    new Answer(
                        one.disposition(),
                        one.hold(),
                        one.reasons().stream().map(Reason::rule).toList())));
  }
}
