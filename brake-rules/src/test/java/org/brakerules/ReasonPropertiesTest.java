package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Collectors;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence.AlsoReplaced;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Place;
import org.brakerules.random.Answer;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/** What holds for every reason of the decision on any job at all. */
class ReasonPropertiesTest {

  private static final int JOBS = 10_000;

  /** Some rules want a rare meeting of findings; the search ends with the last of them. */
  private static final int MOST_JOBS = 4 * JOBS;

  /** A pre-set hub has no limit but its maker's, which random jobs seldom state and exceed. */
  private static final Set<String> SELDOM = Set.of("HUB-030", "HUB-040");

  private final BrakeRules rules = BrakeRules.standard();

  @Test
  void no_reason_goes_in_a_circle() {
    LongAdder consequences = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          JobDecision answer = Answer.of(seed).decision();
          for (Decision decision : answer.decisions()) {
            for (Reason reason : decision.reasons()) {
              for (AlsoReplaced cause : causes(reason)) {
                consequences.increment();
                assertThat(holds(answer, cause, Set.of(decision.part())))
                    .as("%s: %s rests on %s", decision.part(), reason.rule(), cause)
                    .isTrue();
              }
            }
          }
        });
    assertThat(consequences.sum()).isGreaterThan(1_000);
  }

  @Test
  void every_name_in_a_sentence_is_filled_in() {
    Seeds.each(
        JOBS,
        seed -> {
          for (Decision decision : Answer.of(seed).decision().decisions()) {
            for (Reason reason : decision.reasons()) {
              for (String sentence : List.of(reason.sentence(), reason.action())) {
                assertThat(sentence)
                    .as("%s", reason.rule())
                    .doesNotContain("{", "}", "  ", " ,", " .", "()");
              }
            }
          }
        });
  }

  @Test
  void every_rule_speaks_in_some_random_job() {
    Set<String> silent =
        rules.rules().stream()
            .map(Rule::id)
            .filter(id -> !SELDOM.contains(id))
            .collect(Collectors.toCollection(TreeSet::new));
    for (int rank = 0; rank < MOST_JOBS && !silent.isEmpty(); rank++) {
      Answer.of(Seeds.at(rank)).decision().decisions().stream()
          .flatMap(decision -> decision.reasons().stream())
          .forEach(reason -> silent.remove(reason.rule()));
    }
    assertThat(silent).isEmpty();
  }

  private static List<AlsoReplaced> causes(Reason reason) {
    return reason.evidence().stream()
        .filter(AlsoReplaced.class::isInstance)
        .map(AlsoReplaced.class::cast)
        .toList();
  }

  /** Whether a part of the kind is replaced for a reason that needs none of the parts passed. */
  private static boolean holds(JobDecision answer, AlsoReplaced cause, Set<Place> passed) {
    return answer.decisions().stream()
        .filter(one -> one.part().wheelEnd().equals(cause.wheelEnd()))
        .filter(one -> one.part().kind() == cause.kind())
        .filter(one -> one.disposition() == Disposition.REPLACE)
        .filter(one -> !passed.contains(one.part()))
        .anyMatch(one -> holds(answer, one, passed));
  }

  private static boolean holds(JobDecision answer, Decision replaced, Set<Place> passed) {
    Set<Place> further = new HashSet<>(passed);
    further.add(replaced.part());
    return replaced.reasons().stream()
        .filter(reason -> reason.verdict() == Verdict.REPLACE)
        .anyMatch(
            reason -> causes(reason).stream().allMatch(cause -> holds(answer, cause, further)));
  }
}
