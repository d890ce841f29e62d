package org.brakerules.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.brakerules.internal.RuleBase;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.decide.InspectedPart;
import org.brakerules.internal.decide.InspectedParts;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.RuleSetFolders;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.trial.internal.change.LimitChange;
import org.brakerules.trial.internal.change.LimitChanges;

/** The changed rows of limits of one component. */
final class LimitMutations {

  private record OnBench(TrialCase of, BrakeJob job, List<Subject> subjects) {}

  private final Path resources;
  private final Tables tables;
  private final List<TrialCase> cases;
  private final AtomicInteger refused = new AtomicInteger();
  private int tried;

  LimitMutations(Path resources, Tables tables, List<TrialCase> cases) {
    this.resources = resources;
    this.tables = tables;
    this.cases = cases;
  }

  int tried() {
    return tried;
  }

  int refused() {
    return refused.get();
  }

  List<Mutant> survivors(String component, RuleBase base) {
    RuleBaseFiles files = RuleBaseFiles.in(resources.resolve(TrialRules.RULES));
    List<LimitChange> changes =
        LimitChanges.of(Tables.limitRows(files), RuleSetFolders.comparisons(files)).stream()
            .filter(change -> change.limit().startsWith(component + "."))
            .toList();
    tried = changes.size();
    List<OnBench> benches =
        changes.isEmpty()
            ? List.of()
            : cases.parallelStream()
                .map(one -> onBench(one, component))
                .sorted(Comparator.comparing(bench -> !bench.of().component().equals(component)))
                .toList();
    return changes.parallelStream()
        .filter(change -> survives(change, benches, base))
        .map(change -> new Mutant(change.limit(), change.where(), change.words()))
        .toList();
  }

  private OnBench onBench(TrialCase one, String component) {
    BrakeJob job = one.job();
    List<Subject> subjects =
        InspectedParts.of(job, Checks.of(tables, job)).stream()
            .map(InspectedPart::subject)
            .filter(subject -> subject.part().partKind().id().equals(component))
            .toList();
    return new OnBench(one, job, subjects);
  }

  private boolean survives(LimitChange change, List<OnBench> benches, RuleBase base) {
    Optional<Tables> changed = changed(change);
    if (changed.isEmpty()) {
      refused.incrementAndGet();
      return false;
    }
    TrialRules rules = new TrialRules(new RuleBase(changed.get(), base.engine(), base.version()));
    return benches.stream()
        .filter(bench -> differs(bench, change.limit(), changed.get()))
        .allMatch(bench -> rules.satisfy(bench.of()));
  }

  private Optional<Tables> changed(LimitChange change) {
    try {
      return Optional.of(tables.withLimits(change.rows(), change.comparisons()));
    } catch (RuleBaseException impossible) {
      return Optional.empty();
    }
  }

  /** Whether anything the limits say of these parts is another. */
  private boolean differs(OnBench bench, String limit, Tables changed) {
    Checks before = Checks.of(tables, bench.job());
    Checks after = Checks.of(changed, bench.job());
    return bench.subjects().stream()
        .anyMatch(subject -> !said(before, limit, subject).equals(said(after, limit, subject)));
  }

  private static List<Object> said(Checks checks, String limit, Subject subject) {
    List<Object> said = new ArrayList<>(checks.of(subject));
    said.add(checks.unstated(limit, subject));
    checks.of(subject).stream()
        .map(check -> checks.station(check.property(), subject))
        .forEach(said::add);
    return said;
  }
}
