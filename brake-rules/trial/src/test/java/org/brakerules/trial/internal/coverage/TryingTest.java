package org.brakerules.trial.internal.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.brakerules.internal.RuleBase;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.table.Fingerprint;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.linter.internal.base.RuleBaseReader;
import org.brakerules.random.RandomJobs;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.internal.written.WrittenRules;
import org.junit.jupiter.api.Test;

/** Rules that are tried one by one match where the engine says they do. */
class TryingTest {

  private static final Path RESOURCES = Path.of("../src/main/resources");

  @Test
  void a_rule_matches_a_random_job_exactly_where_it_fires_in_the_engine() throws IOException {
    List<WrittenRule> rules = RuleBaseReader.read(RESOURCES).rules().map(WrittenRules::of).toList();
    RuleBase base = base(rules);
    List<BenchedCase> jobs = LongStream.range(0, 300).mapToObj(seed -> job(seed, base)).toList();

    int fired = 0;
    for (WrittenRule rule : rules) {
      TriedRule tried = new TriedRule(rule);
      for (BenchedCase job : jobs) {
        boolean fires = job.fired().contains(rule.name());
        fired += fires ? 1 : 0;
        assertThat(Trying.of(tried, job).matched())
            .as("%s on random job %s", rule.id(), job.name().name())
            .isEqualTo(fires);
      }
    }
    assertThat(fired).isGreaterThan(1000);
  }

  private static RuleBase base(List<WrittenRule> rules) {
    RuleBaseFiles files = RuleBaseFiles.in(RESOURCES.resolve("org/brakerules/rules"));
    Tables tables = Tables.load(files);
    return new RuleBase(tables, RuleEngine.ofWritten(rules, tables, files), Fingerprint.of(files));
  }

  private static BenchedCase job(long seed, RuleBase base) {
    CaseName name = new CaseName("random", String.valueOf(seed));
    return BenchedCase.of(name, RandomJobs.of(seed), Set.of(), base);
  }
}
