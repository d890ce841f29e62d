package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.concurrent.atomic.LongAdder;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.Evidence.Measured;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.part.PartKind;
import org.brakerules.random.Answer;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/**
 * An automatic adjuster is never turned by hand to bring a stroke back: that hides why it grew. An
 * accident board's report of 2006 and common practice.
 */
class AutomaticAdjusterTest {

  private static final int JOBS = 10_000;
  private static final Set<AdjusterKind> AUTOMATIC =
      Set.of(AdjusterKind.AUTOMATIC_PAWL, AdjusterKind.AUTOMATIC_CLUTCH);

  @Test
  void no_chamber_with_an_automatic_adjuster_is_adjusted_for_its_stroke() {
    LongAdder longStrokes = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          Answer answer = Answer.of(seed);
          answer
              .job()
              .wheelEnds()
              .filter(end -> AUTOMATIC.contains(end.layout().adjuster()))
              .flatMap(end -> chamber(answer, end).reasons().stream())
              .filter(AutomaticAdjusterTest::restsOnStroke)
              .forEach(
                  reason -> {
                    longStrokes.increment();
                    assertThat(reason.verdict()).as("%s", reason).isNotEqualTo(Verdict.ADJUST);
                  });
        });
    assertThat(longStrokes.sum()).isGreaterThan(100);
  }

  private static Decision chamber(Answer answer, WheelEnd end) {
    return answer.decision().decision(end.path().place(PartKind.CHAMBER)).orElseThrow();
  }

  private static boolean restsOnStroke(Reason reason) {
    return reason.evidence().stream().anyMatch(AutomaticAdjusterTest::isLongStroke);
  }

  private static boolean isLongStroke(Evidence evidence) {
    return evidence instanceof Measured measured
        && measured.check().limitId().equals("chamber.applied-stroke.max");
  }
}
