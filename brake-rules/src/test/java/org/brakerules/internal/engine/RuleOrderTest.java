package org.brakerules.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URL;
import java.net.URLClassLoader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.brakerules.internal.decide.DecisionMaker;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.random.Answer;
import org.brakerules.random.Seeds;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.junit.jupiter.api.Test;

/**
 * The order of the rules must not matter. Shuffled facts do not show a rule that depends on order,
 * such as one with a {@code not} over a marker; shuffled rules do.
 */
class RuleOrderTest {

  private static final int JOBS = 10_000;
  private static final int ORDERS = 10;

  private final Tables tables = Tables.load();
  private final RuleEngine standard = RuleEngine.load(tables);

  @Test
  void rules_in_another_order_give_the_same_decisions() {
    List<RuleEngine> shuffled = new ArrayList<>();
    for (int order = 1; order <= ORDERS; order++) {
      shuffled.add(inOrder(shuffle(order)));
    }
    Seeds.each(
        JOBS,
        seed -> {
          RuleEngine other = shuffled.get((int) (seed % ORDERS));
          Answer answer = Answer.of(seed);
          assertThat(new DecisionMaker(answer.job(), tables, other).decide())
              .as("order %d", 1 + seed % ORDERS)
              .isEqualTo(answer.decision().decisions());
        });
  }

  @Test
  void the_order_is_really_another_one() {
    assertThat(namesIn(shuffle(1)))
        .isNotEqualTo(namesIn(Comparator.comparing(Rule::getName)))
        .containsExactlyInAnyOrderElementsOf(namesIn(Comparator.comparing(Rule::getName)));
  }

  @Test
  void rules_load_under_a_foreign_or_absent_context_class_loader() throws Exception {
    try (URLClassLoader foreign = new URLClassLoader(new URL[0], null)) {
      assertThat(saidUnder(foreign)).isEqualTo(said(standard)).isNotEmpty();
      assertThat(saidUnder(null)).isEqualTo(said(standard));
    }
  }

  private static List<String> said(RuleEngine engine) {
    Camshaft cracked = Camshaft.asFound(WheelEndPath.of(2, Side.LEFT)).crack(Sign.SEEN).build();
    return engine.fire(List.of(cracked)).stream().map(finding -> finding.rule().id()).toList();
  }

  private static List<String> saidUnder(ClassLoader context) throws Exception {
    ExecutorService one =
        Executors.newSingleThreadExecutor(
            task -> {
              Thread thread = new Thread(task);
              thread.setContextClassLoader(context);
              return thread;
            });
    try {
      return one.submit(() -> said(RuleEngine.load(Tables.load()))).get();
    } finally {
      one.shutdownNow();
    }
  }

  private RuleEngine inOrder(Comparator<Rule> order) {
    return RuleEngine.of(models(order), tables, RuleBaseFiles.ofThisArtifact());
  }

  private static List<Model> models(Comparator<Rule> order) {
    return CompiledRules.models().stream()
        .map(model -> new InOrder(model, order))
        .map(Model.class::cast)
        .toList();
  }

  private static List<String> namesIn(Comparator<Rule> order) {
    return models(order).stream()
        .flatMap(model -> model.getRules().stream())
        .map(Rule::getName)
        .toList();
  }

  /** An order that depends on names and seed alone. */
  private static Comparator<Rule> shuffle(int seed) {
    return Comparator.comparing(
        (Rule rule) -> Integer.reverse((rule.getName() + seed).hashCode() * 0x9E3779B9));
  }
}
