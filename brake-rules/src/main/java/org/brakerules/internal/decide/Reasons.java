package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Point.Finds;
import org.brakerules.internal.table.Property;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Sign;

/** Every reason for the decision on one part. */
final class Reasons {

  private static final Comparator<Reason> GRAVEST_FIRST =
      Comparator.comparing((Reason reason) -> reason.verdict() != Verdict.HOLD)
          .thenComparing(reason -> reason.verdict().disposition(), Comparator.reverseOrder())
          .thenComparing(Reason::rule)
          .thenComparing(Reason::sentence)
          .thenComparing(reason -> reason.evidence().toString());

  private final InspectedPart part;
  private final List<Point> points;
  private final List<Finding> findings;
  private final List<Needed> needed;
  private final boolean hasRules;
  private final boolean judged;
  private final Scope scope;
  private final List<Reason> reasons = new ArrayList<>();

  Reasons(
      InspectedPart part,
      List<Point> points,
      List<Finding> findings,
      List<Needed> needed,
      boolean hasRules,
      boolean judged,
      Scope scope) {
    this.part = part;
    this.points = points;
    this.findings = findings;
    this.needed = needed;
    this.hasRules = hasRules;
    this.judged = judged;
    this.scope = scope;
  }

  List<Reason> all() {
    findings.stream()
        .filter(this::stillOpen)
        .map(Reasons::fromRule)
        .distinct()
        .forEach(reasons::add);
    unanswered().ifPresent(reasons::add);
    if (worst() != Disposition.REPLACE) {
      whyUndecided().ifPresent(reasons::add);
    }
    if (reasons.isEmpty()) {
      reasons.add(
          GeneralRule.ALL_LOOKED_AT.reason(
              "Every look and reading this decision needs was taken, and none speaks against it."
                  + whatTheScopeLeaves(),
              "",
              List.of()));
    }
    return reasons.stream().sorted(GRAVEST_FIRST).toList();
  }

  /** A request to look at something is no reason any more once it was looked at. */
  private boolean stillOpen(Finding finding) {
    return finding.point().isEmpty()
        || needed.stream().anyMatch(one -> one.point().equals(finding.point()));
  }

  private static Reason fromRule(Finding finding) {
    return new Reason(
        finding.rule().id(),
        finding.rule().title(),
        finding.verdict(),
        Wording.fill(finding.rule().because(), finding.part(), finding.facts()),
        Wording.fill(finding.rule().action(), finding.part(), finding.facts()),
        EvidenceOf.finding(finding),
        finding.rule().sources());
  }

  private Disposition worst() {
    return reasons.stream()
        .map(reason -> reason.verdict().disposition())
        .reduce(Disposition.REUSE, Disposition::worse);
  }

  private Optional<Reason> whyUndecided() {
    if (!part.inspected()) {
      return Optional.of(
          GeneralRule.NOT_INSPECTED.reason(
              "A brake of this layout has this part, and the job does not mention it.",
              "Inspect it, or state that it is not fitted.",
              List.of()));
    }
    if (part.part().presence() == Presence.MISSING) {
      return Optional.of(
          GeneralRule.MISSING.reason(
              "The part is missing.", "Find out what the maker fits here, and fit it.", List.of()));
    }
    if (!needed.isEmpty()) {
      return Optional.of(
          GeneralRule.STILL_OPEN.reason(
              "Not known yet: "
                  + needed.stream().map(Needed::what).distinct().collect(Collectors.joining("; "))
                  + ".",
              "Look at or measure what is listed as needed.",
              List.of()));
    }
    if (!hasRules) {
      return Optional.of(
          GeneralRule.NO_RULES.reason(
              "This rule base has no rules for this kind of part yet.",
              "Decide it by the maker's manual.",
              List.of()));
    }
    return judged
        ? Optional.empty()
        : Optional.of(
            GeneralRule.NOT_LAID_OPEN.reason(
                "With the brake this far apart (" + words(scope) + ") the part cannot be judged.",
                "Open the brake further, or state the scope that was reached.",
                List.of()));
  }

  /** What went unseen because the brake was not opened further is said, never passed over. */
  private String whatTheScopeLeaves() {
    return scope == Scope.CAMSHAFT_OUT
        ? ""
        : " This speaks only of what can be seen with the brake this far apart ("
            + words(scope)
            + ").";
  }

  private static String words(Scope scope) {
    return Names.of(scope).replace('-', ' ');
  }

  /** A finding that no rule speaks of never lets a part pass. */
  private Optional<Reason> unanswered() {
    List<Evidence> open = new ArrayList<>();
    List<String> found = new ArrayList<>();
    List<Evidence> answered = reasons.stream().flatMap(one -> one.evidence().stream()).toList();
    for (Check check : part.checks(CheckStatus.BEYOND)) {
      Evidence measured = new Evidence.Measured(check);
      if (!answered.contains(measured)) {
        open.add(measured);
        found.add("a reading beyond " + check.limitId());
      }
    }
    for (Property sign : Property.signs(part.part().partKind())) {
      Evidence seen = new Evidence.Stated(part.part().place(), sign.name(), "seen");
      if (isFaultSeen(sign) && !answered.contains(seen)) {
        open.add(seen);
        found.add(sign.meaning());
      }
    }
    if (open.isEmpty() || reasons.stream().anyMatch(one -> one.verdict() == Verdict.REPLACE)) {
      return Optional.empty();
    }
    return Optional.of(
        GeneralRule.UNANSWERED.reason(
            "Found, and no rule speaks of it: " + String.join("; ", found) + ".",
            "Do not put the part back on this answer; decide it by the maker's manual.",
            open));
  }

  /** Every sign is a fault, but those that the points call good or not for this part. */
  private boolean isFaultSeen(Property sign) {
    return part.shows(sign, Sign.SEEN)
        && points.stream()
            .filter(point -> !point.ofLayout() && point.property().name().equals(sign.name()))
            .noneMatch(
                point ->
                    point.finds() == Finds.GOOD || point.selector().fit(part.subject()) == Fit.NO);
  }
}
