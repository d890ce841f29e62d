package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.atomic.LongAdder;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Sign;
import org.brakerules.random.Answer;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/** A pattern of wear tells where to look, and condemns nothing. */
class CausesTest {

  private static final int JOBS = 10_000;

  @Test
  void no_fitting_is_pumped_past_a_seal_that_lets_grease_through() {
    assertThat(
            SoundBrake.tube()
                .with("lining/upper", "greaseSoaked", Sign.SEEN)
                .with("grease-fitting/tube", "purgeSideDry", Sign.NOT_CHECKED)
                .decision("grease-fitting/tube")
                .actions())
        .anyMatch(
            action -> action.contains("leave it open: the purge with the new seals settles it"));
  }

  @Test
  void a_cause_only_asks_and_no_part_is_replaced_for_causes_alone() {
    LongAdder asked = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          for (Decision decision : Answer.of(seed).decision().decisions()) {
            List<Reason> causes = decision.reasons().stream().filter(this::isCause).toList();
            asked.add(causes.size());
            assertThat(causes)
                .as("%s", decision.part())
                .extracting(Reason::verdict)
                .isSubsetOf(Verdict.LOOK_AT, Verdict.MEASURE_AGAIN);
            if (decision.disposition() == Disposition.REPLACE) {
              assertThat(decision.reasons())
                  .as("%s", decision.part())
                  .anyMatch(one -> one.verdict() == Verdict.REPLACE && !isCause(one));
            }
          }
        });
    assertThat(asked.sum()).isGreaterThan(1_000);
  }

  private boolean isCause(Reason reason) {
    return reason.rule().startsWith("CAUSE-");
  }
}
