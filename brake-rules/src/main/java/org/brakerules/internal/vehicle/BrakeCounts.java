package org.brakerules.internal.vehicle;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.vehicle.AxleStatus;
import org.brakerules.vehicle.BrakeCount;

/** How each brake of a job counts. */
final class BrakeCounts {

  private static final String APPLIED_STROKE = "appliedStroke";
  private static final Set<Verdict> FAILING =
      Set.of(Verdict.REPLACE, Verdict.HOLD, Verdict.ADJUST, Verdict.CLEAN);

  private final Tables tables;
  private final RuleSet ruleSet;
  private final Strokes strokes;

  BrakeCounts(Tables tables, RuleSet ruleSet, Strokes strokes) {
    this.tables = tables;
    this.ruleSet = ruleSet;
    this.strokes = strokes;
  }

  /** Both brakes of every axle, in path order. */
  List<BrakeCount> of(List<AxleStatus> axles, List<Decision> decisions) {
    return axles.stream()
        .flatMap(axle -> Stream.of(axle.left(), axle.left().partner()))
        .map(end -> count(end, decisions))
        .toList();
  }

  private BrakeCount count(WheelEndPath end, List<Decision> decisions) {
    return new BrakeCount(
        end,
        strokes.standing(end),
        strokes.beyond(end),
        decisions.stream()
            .filter(one -> one.part().wheelEnd().equals(end))
            .filter(this::failsInSomethingElse)
            .map(one -> one.part().toString())
            .toList());
  }

  private boolean failsInSomethingElse(Decision decision) {
    return decision.road() == RoadAnswer.FAILED
        && (decision.reasons().stream().anyMatch(this::isLawOnSomethingElse)
            || isBeyondInSomethingElse(decision));
  }

  private boolean isLawOnSomethingElse(Reason reason) {
    return FAILING.contains(reason.verdict())
        && reason.source().stream().anyMatch(source -> tables.sources().isLawOf(source, ruleSet))
        && reason.evidence().stream().noneMatch(isStroke());
  }

  /** A part fails the road by a limit of the law too, whatever its rules cite. */
  private static boolean isBeyondInSomethingElse(Decision decision) {
    return decision.reasons().stream()
        .flatMap(reason -> reason.evidence().stream())
        .filter(Evidence.Measured.class::isInstance)
        .anyMatch(isStroke().negate());
  }

  private static Predicate<Evidence> isStroke() {
    return evidence ->
        evidence instanceof Evidence.Measured measured
            && measured.check().property().equals(APPLIED_STROKE);
  }
}
