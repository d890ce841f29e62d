package org.brakerules.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.brakerules.internal.fact.BeyondLimit;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.drools.model.Model;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/** Sessions are kept between jobs, and never one whose job failed. */
class SessionPoolTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final Camshaft CRACKED = Camshaft.asFound(LEFT).crack(Sign.SEEN).build();
  private static final CamshaftBushing BUSHING =
      CamshaftBushing.asFound(LEFT, Station.HEAD_END).build();

  private final Tables tables = Tables.load();
  private final List<Model> models = CompiledRules.models();
  private final Map<String, RuleText> texts =
      RuleTexts.of(models, tables, RuleBaseFiles.ofThisArtifact());
  private final KieBase base = CompiledRules.ruleBase(models);
  private final SessionPool pool = new SessionPool(base, FactSieve.Sifted::all);

  @Test
  void jobs_one_after_the_other_share_one_session_and_know_nothing_of_each_other() {
    for (int i = 0; i < 60; i++) {
      assertThat(rules(List.of(CRACKED, BUSHING)))
          .containsExactlyInAnyOrder("CAMSHAFT-180", "CAMSHAFT-BUSHING-020");
      assertThat(rules(List.of(BUSHING))).isEmpty();
      assertThat(base.getKieSessions()).hasSize(1);
    }
  }

  @Test
  void a_job_that_fails_while_its_rules_fire_disposes_its_session() {
    rules(List.of(CRACKED));
    KieSession first = base.getKieSessions().iterator().next();
    Map<String, RuleText> unknown = Map.of();

    assertThatThrownBy(() -> pool.fire(List.of(CRACKED, BUSHING), unknown, name -> true))
        .hasStackTraceContaining("without a rule");

    assertThat(base.getKieSessions().contains(first)).isFalse();
    assertThat(rules(List.of(CRACKED, BUSHING)))
        .containsExactlyInAnyOrder("CAMSHAFT-180", "CAMSHAFT-BUSHING-020");
    assertThat(base.getKieSessions()).hasSize(1);
  }

  @Test
  void a_job_with_a_fact_that_cannot_be_read_disposes_its_session() {
    for (int i = 0; i < 5; i++) {
      assertThatThrownBy(() -> pool.fire(List.of(CRACKED, unreadable()), texts, name -> true))
          .isInstanceOf(NullPointerException.class);
      assertThat(base.getKieSessions()).isEmpty();
    }
    assertThat(rules(List.of(BUSHING))).isEmpty();
    assertThat(rules(List.of(CRACKED))).containsExactly("CAMSHAFT-180");
  }

  @Test
  void no_more_sessions_than_threads_are_kept() throws Exception {
    int threads = 4;
    CyclicBarrier start = new CyclicBarrier(threads);
    ExecutorService shop = Executors.newFixedThreadPool(threads);
    Callable<Void> work =
        () -> {
          start.await();
          for (int i = 0; i < 500; i++) {
            assertThat(rules(List.of(CRACKED))).containsExactly("CAMSHAFT-180");
          }
          return null;
        };
    try {
      for (Future<Void> one : shop.invokeAll(List.of(work, work, work, work))) {
        one.get();
      }
    } finally {
      shop.shutdownNow();
    }
    assertThat(base.getKieSessions()).hasSizeBetween(1, threads);
  }

  /** A program that loads the rule base again and again must not keep every one it ever had. */
  @Test
  void sixty_reloads_leave_nothing_behind() throws Exception {
    List<WeakReference<RuleEngine>> loaded = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      RuleEngine engine = RuleEngine.load(tables);
      assertThat(engine.fire(List.of(CRACKED))).isNotEmpty();
      loaded.add(new WeakReference<>(engine));
    }
    for (int i = 0; i < 50 && alive(loaded) > 1; i++) {
      System.gc();
      Thread.sleep(20);
    }
    assertThat(alive(loaded)).isLessThanOrEqualTo(1);
  }

  private static long alive(List<WeakReference<RuleEngine>> loaded) {
    return loaded.stream().filter(one -> one.get() != null).count();
  }

  private List<String> rules(List<?> facts) {
    return pool.fire(facts, texts, name -> true).stream()
        .map(finding -> finding.rule().id())
        .toList();
  }

  /** A marker without the check it should carry: asking for its wheel end fails. */
  private static BeyondLimit unreadable() {
    Place nowhere = null;
    Check broken =
        new Check(
            nowhere,
            "radialPlay",
            "camshaft-bushing.radial-play.max",
            CheckStatus.BEYOND,
            null,
            null,
            null);
    return new BeyondLimit("camshaft-bushing.radial-play.max", Condition.AS_FOUND, broken);
  }
}
