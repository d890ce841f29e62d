package org.brakerules.internal.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakerules.BrakeRules;
import org.brakerules.internal.table.Tables;
import org.brakerules.random.Answer;
import org.brakerules.random.Seeds;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;
import org.junit.jupiter.api.Test;

/** No step of a plan comes before one it needs, not even where a step between them is absent. */
class PlansInOrderTest {

  private static final int JOBS = 400;

  private static final Map<String, Set<String>> NEEDS = needs();

  @Test
  void every_step_comes_after_all_that_the_table_says_it_needs() {
    Seeds.each(
        JOBS,
        seed -> {
          WorkPlan plan = BrakeRules.standard().plan(Answer.of(seed).job());
          for (int i = 0; i < plan.steps().size(); i++) {
            WorkStep step = plan.steps().get(i);
            assertThat(step.number()).isEqualTo(i + 1);
            assertThat(step.after()).allMatch(before -> before < step.number());
            for (WorkStep later : plan.steps().subList(i + 1, plan.steps().size())) {
              assertThat(
                      NEEDS.getOrDefault(step.id(), Set.of()).contains(later.id())
                          && meet(step, later))
                  .as("%s at %s before %s at %s", step.id(), step.on(), later.id(), later.on())
                  .isFalse();
            }
          }
        });
  }

  /** Whether what is done to the one concerns the other. */
  private static boolean meet(WorkStep one, WorkStep other) {
    return contains(one.on(), other.on()) || contains(other.on(), one.on());
  }

  private static boolean contains(String outer, String inner) {
    return outer.isEmpty() || outer.equals(inner) || inner.startsWith(outer + "/");
  }

  private static Map<String, Set<String>> needs() {
    StepTable table = StepTable.load(Tables.load());
    Map<String, Set<String>> all = new HashMap<>();
    for (StepRow row : table.rows()) {
      // Only needs between steps of one place pass through others at that place.
      Deque<StepRow> open = new ArrayDeque<>(List.of(row));
      Set<String> needs = new HashSet<>();
      while (!open.isEmpty()) {
        for (String need : open.remove().needs()) {
          StepRow needed = table.find(need).orElseThrow();
          if (needed.level() == row.level() && needs.add(need)) {
            open.add(needed);
          } else if (needed.level() != row.level()) {
            needs.add(need);
          }
        }
      }
      all.put(row.id(), needs);
    }
    return all;
  }
}
