package org.brakerules.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakerules.internal.decide.DecisionMaker;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.brakerules.random.RandomJobs;
import org.brakerules.random.Seeds;
import org.drools.model.Model;
import org.junit.jupiter.api.Test;

class FactSieveTest {

  private static final int JOBS = 5_000;
  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);

  private final Tables tables = Tables.load();
  private final RuleEngine engine = RuleEngine.load(tables);
  private final List<Model> models = CompiledRules.models();
  private final Map<String, RuleText> texts =
      RuleTexts.of(models, tables, RuleBaseFiles.ofThisArtifact());
  private final FactSieve sieve =
      FactSieve.of(models, rule -> texts.get(rule.getName()).verdict().name().equals("REPLACE"));
  private final SessionPool sifting = pool(true);
  private final SessionPool tellingAll = pool(false);

  @Test
  void rules_find_the_same_whether_facts_are_kept_back_or_not() {
    Seeds.each(
        JOBS,
        seed -> {
          List<Object> facts = facts(RandomJobs.of(seed));
          assertThat(matches(sifting, facts)).isEqualTo(matches(tellingAll, facts));
          assertThat(found(sifting, facts)).isEqualTo(found(tellingAll, facts));
        });
  }

  @Test
  void most_facts_of_a_sound_brake_are_kept_back() {
    List<Object> facts = facts(demo("finished-rebuild.json"));
    assertThat(sieve.sift(facts).facts()).hasSizeLessThan(facts.size() / 5).isNotEmpty();
  }

  @Test
  void a_part_waits_for_one_that_may_be_replaced_while_the_rules_speak() {
    CamshaftBushing bushing = CamshaftBushing.asFound(LEFT, Station.HEAD_END).build();
    Camshaft twisted = Camshaft.asFound(LEFT).splineTwisted(Sign.SEEN).build();
    Camshaft sound = Camshaft.asFound(LEFT).splineTwisted(Sign.NOT_SEEN).build();

    assertThat(sieve.sift(List.of(twisted, bushing)).facts()).contains(twisted, bushing);
    assertThat(sieve.sift(List.of(sound, bushing)).facts()).isEmpty();
  }

  @Test
  void a_replaced_part_is_told_only_where_a_rule_at_stake_asks_for_it() {
    CamshaftBushing bushing = CamshaftBushing.asFound(LEFT, Station.HEAD_END).build();
    Camshaft twisted = Camshaft.asFound(LEFT).splineTwisted(Sign.SEEN).build();
    FactSieve.Sifted sifted = sieve.sift(List.of(twisted, bushing));

    assertThat(sifted.takes()).accepts(new Replaced(PartKind.CAMSHAFT, LEFT));
    assertThat(sifted.takes()).rejects(new Replaced(PartKind.TONE_RING, LEFT));
  }

  private SessionPool pool(boolean sifts) {
    return new SessionPool(
        CompiledRules.ruleBase(models),
        facts -> sifts ? sieve.sift(facts) : FactSieve.Sifted.all(facts));
  }

  private Set<Finding> found(SessionPool pool, List<Object> facts) {
    return new HashSet<>(pool.fire(facts, texts, name -> true));
  }

  private Map<String, Set<List<Object>>> matches(SessionPool pool, List<Object> facts) {
    return pool.matches(facts, texts, name -> true);
  }

  /** The facts of a job before any rule spoke. */
  private List<Object> facts(BrakeJob job) {
    return new DecisionMaker(job, tables, engine)
        .facts().stream().filter(fact -> !(fact instanceof Replaced)).toList();
  }

  private static BrakeJob demo(String file) {
    try {
      return JobReader.read(Files.readString(Path.of("..", "brake-examples", "jobs", file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
