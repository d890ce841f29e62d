package org.brakerules.trial;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.brakerules.JobRefusedException;
import org.brakerules.Rule;
import org.brakerules.internal.RuleBase;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.table.Fingerprint;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.linter.internal.base.RuleBaseReader;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.trial.internal.written.WrittenRules;

/**
 * A rule base as its author left it in a folder, put together without a compiler. It decides what
 * the build would make of the same files.
 */
public final class TrialRules {

  static final String RULES = "org/brakerules/rules";

  private final RuleBase base;
  private final Map<BrakeJob, JobDecision> decided = new ConcurrentHashMap<>();

  TrialRules(RuleBase base) {
    this.base = base;
  }

  /**
   * Reads a rule base that the linter finds nothing wrong with.
   *
   * @param resources the folder with {@code org/brakerules/rules} in it
   * @throws IOException if there is none or it cannot be read
   */
  public static TrialRules in(Path resources) throws IOException {
    return with(resources, rules(resources), List.of());
  }

  /** The rules of a folder, taken apart. */
  static List<WrittenRule> rules(Path resources) throws IOException {
    return RuleBaseReader.read(resources).rules().map(WrittenRules::of).toList();
  }

  /** The same with variants of rules beside them, which keep silent until they are chosen. */
  static TrialRules with(Path resources, List<WrittenRule> rules, List<WrittenRule> variants) {
    RuleBaseFiles files = RuleBaseFiles.in(resources.resolve(RULES));
    Tables tables = Tables.load(files);
    List<WrittenRule> all = new ArrayList<>(rules);
    all.addAll(variants);
    RuleEngine engine = RuleEngine.ofWritten(all, tables, files);
    return new TrialRules(new RuleBase(tables, engine, Fingerprint.of(files)));
  }

  /** Whether a case is content; one that names a point or limit no table has any more is not. */
  boolean satisfy(TrialCase one) {
    try {
      return one.isAsExpected(this);
    } catch (RuleBaseException | JobRefusedException noticed) {
      return false;
    }
  }

  RuleBase base() {
    return base;
  }

  /**
   * Decides a job.
   *
   * @throws JobRefusedException if the job names what the rule base does not know
   */
  public JobDecision decide(BrakeJob job) {
    return base.decide(job);
  }

  /**
   * The same for a job that is asked about again and again, such as one others are held against.
   */
  public JobDecision decideOnce(BrakeJob job) {
    return decided.computeIfAbsent(job, base::decide);
  }

  /** Which condition kept a rule from firing on a job; empty if it fires. */
  public Optional<String> whyNot(BrakeJob job, String ruleId) {
    return base.whyNot(job, ruleId);
  }

  /** Its rules, in the order of components and ids. */
  public List<Rule> rules() {
    return base.rules();
  }

  /** Which rule base it is. */
  public RuleBaseVersion version() {
    return base.version();
  }

  /** The rows of its limits. */
  public List<Limit> limits() {
    return base.tables().limits().rows().map(LimitRow::limit).toList();
  }

  /** The ids of its rules. */
  public Stream<String> ruleIds() {
    return base.engine().rules().stream().map(rule -> rule.id());
  }
}
