package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URL;
import java.net.URLClassLoader;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.random.Answer;
import org.brakerules.random.ChangedJob;
import org.brakerules.random.Dice;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/** The same job gets the same answer, however it is listed and whoever asks. */
class SameAnswerTest {

  private static final int JOBS = 10_000;
  private static final int AT_A_TIME = 250;
  private static final int THREADS = 8;

  private final BrakeRules rules = BrakeRules.standard();

  @Test
  void parts_and_wheel_ends_listed_in_another_order_change_nothing() {
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = Answer.of(seed).job();
          BrakeJob shuffled = ChangedJob.shuffled(job, new Dice(seed).random());
          assertThat(rules.decide(shuffled)).isEqualTo(Answer.of(seed).decision());
        });
  }

  /** Each thread starts at another job, so that different dates and rule sets meet. */
  @Test
  void eight_threads_at_once_get_the_answers_of_one_alone() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      for (int first = 0; first < JOBS; first += AT_A_TIME) {
        compare(threads, first);
      }
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void a_foreign_or_absent_context_class_loader_changes_nothing() throws Exception {
    List<BrakeJob> jobs = jobs(0);
    List<JobDecision> expected = answers(0);
    try (URLClassLoader foreign = new URLClassLoader(new URL[0], null)) {
      assertThat(underContext(foreign, jobs)).isEqualTo(expected);
      assertThat(underContext(null, jobs)).isEqualTo(expected);
    }
  }

  private void compare(ExecutorService threads, int first) throws Exception {
    List<BrakeJob> jobs = jobs(first);
    List<JobDecision> alone = answers(first);
    CyclicBarrier start = new CyclicBarrier(THREADS);
    List<Callable<Void>> askers = new ArrayList<>();
    for (int thread = 0; thread < THREADS; thread++) {
      int offset = thread * AT_A_TIME / THREADS;
      askers.add(
          () -> {
            start.await();
            for (int i = 0; i < AT_A_TIME / 4; i++) {
              int job = (i + offset) % AT_A_TIME;
              assertThat(rules.decide(jobs.get(job)))
                  .as("job with seed %d", Seeds.at(first + job))
                  .isEqualTo(alone.get(job));
            }
            return null;
          });
    }
    for (Future<Void> asker : threads.invokeAll(askers)) {
      asker.get();
    }
  }

  private static List<BrakeJob> jobs(int first) {
    List<BrakeJob> jobs = new ArrayList<>();
    for (int i = 0; i < AT_A_TIME; i++) {
      jobs.add(Answer.of(Seeds.at(first + i)).job());
    }
    return jobs;
  }

  private static List<JobDecision> answers(int first) {
    List<JobDecision> answers = new ArrayList<>();
    for (int i = 0; i < AT_A_TIME; i++) {
      answers.add(Answer.of(Seeds.at(first + i)).decision());
    }
    return answers;
  }

  private List<JobDecision> underContext(ClassLoader context, List<BrakeJob> jobs)
      throws InterruptedException, ExecutionException {
    ExecutorService one =
        Executors.newSingleThreadExecutor(
            task -> {
              Thread thread = new Thread(task);
              thread.setContextClassLoader(context);
              return thread;
            });
    try {
      return one.submit(() -> jobs.stream().map(rules::decide).toList()).get();
    } finally {
      one.shutdownNow();
    }
  }
}
