package org.brakerules.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.brakerules.internal.decide.DecisionMaker;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.Drum;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.random.RandomJobs;
import org.brakerules.random.Seeds;
import org.drools.model.Model;
import org.junit.jupiter.api.Test;

/** A first job waits for its own rules only, and no job is answered differently for that. */
class SessionsOnDemandTest {

  private static final int JOBS = 60;
  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final List<Object> CAMSHAFT =
      List.of(Camshaft.asFound(LEFT).crack(Sign.SEEN).build());
  private static final List<Object> DRUM = List.of(Drum.asFound(LEFT).scored(Sign.SEEN).build());

  private final Tables tables = Tables.load();
  private final AtomicInteger loaded = new AtomicInteger();
  private final SessionsOnDemand sessions = new SessionsOnDemand(this::models, rule -> true);

  @Test
  void the_same_job_is_asked_again_in_the_same_sessions() {
    SessionPool first = sessions.over(CAMSHAFT);

    assertThat(sessions.over(CAMSHAFT)).isSameAs(first);
    assertThat(loaded).hasValue(1);
  }

  @Test
  void a_job_with_other_rules_at_stake_gets_sessions_over_all_rules() {
    SessionPool first = sessions.over(CAMSHAFT);
    SessionPool all = sessions.over(DRUM);

    assertThat(all).isNotSameAs(first);
    assertThat(sessions.over(CAMSHAFT)).isSameAs(all);
    assertThat(loaded).hasValue(2);
  }

  @Test
  void who_asks_often_gets_sessions_over_all_rules() {
    SessionPool first = sessions.over(CAMSHAFT);
    IntStream.range(0, 10).forEach(again -> sessions.over(CAMSHAFT));

    assertThat(sessions.over(CAMSHAFT)).isNotSameAs(first);
    assertThat(loaded).hasValue(2);
  }

  @Test
  void threads_that_ask_at_once_share_what_is_made() {
    Set<SessionPool> made = ConcurrentHashMap.newKeySet();
    IntStream.range(0, 200).parallel().forEach(one -> made.add(sessions.over(DRUM)));

    assertThat(made).hasSize(2);
    assertThat(loaded).hasValue(2);
  }

  @Test
  void the_first_job_finds_what_it_would_find_among_all_rules() {
    RuleEngine all = RuleEngine.of(models(), tables, RuleBaseFiles.ofThisArtifact());
    Seeds.each(
        JOBS,
        seed -> {
          RuleEngine first = RuleEngine.load(tables);
          assertThat(found(new DecisionMaker(RandomJobs.of(seed), tables, first)))
              .isEqualTo(found(new DecisionMaker(RandomJobs.of(seed), tables, all)));
        });
  }

  private static Set<Object> found(DecisionMaker maker) {
    return new HashSet<>(List.of(maker.decide(), maker.matches(), maker.decide()));
  }

  private List<Model> models() {
    loaded.incrementAndGet();
    return CompiledRules.models();
  }
}
