package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Point.Finds;
import org.brakerules.internal.table.Property;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Sign;

/** Every reason for the decision on one part. */
final class Reasons {

  private static final Comparator<Reason> GRAVEST_FIRST =
      Comparator.comparing((Reason reason) -> reason.verdict() != Verdict.HOLD)
          .thenComparing(reason -> reason.verdict().disposition(), Comparator.reverseOrder())
          // What was found on the part says more than what its neighbours drag along.
          .thenComparing(Reason::isConsequence)
          .thenComparing(Reason::rule)
          .thenComparing(Reason::sentence)
          .thenComparing(reason -> reason.evidence().toString());

  private final InspectedPart part;
  private final List<Point> points;
  private final List<Finding> findings;
  private final List<Finding> findingsOfJob;
  private final List<Needed> needed;
  private final boolean judged;
  private final Scope scope;
  private final List<Reason> reasons = new ArrayList<>();

  Reasons(
      InspectedPart part,
      List<Point> points,
      List<Finding> findings,
      List<Finding> findingsOfJob,
      List<Needed> needed,
      boolean judged,
      Scope scope) {
    this.part = part;
    this.points = points;
    this.findings = findings;
    this.findingsOfJob = findingsOfJob;
    this.needed = needed;
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
    Map<Evidence, String> found = found();
    if (found.isEmpty() || worst() == Disposition.REPLACE) {
      return Optional.empty();
    }
    found.keySet().removeAll(answered());
    return found.isEmpty()
        ? Optional.empty()
        : Optional.of(
            GeneralRule.UNANSWERED.reason(
                "Found, and no rule speaks of it: " + String.join("; ", found.values()) + ".",
                "Do not put the part back on this answer; decide it by the maker's manual.",
                List.copyOf(found.keySet())));
  }

  /** Everything wrong that was found on the part, with its name in a sentence. */
  private Map<Evidence, String> found() {
    Map<Evidence, String> found = new LinkedHashMap<>();
    for (Check check : part.checks(CheckStatus.BEYOND)) {
      found.put(new Evidence.Measured(check), "a reading beyond " + check.limitId());
    }
    for (Property sign : Property.signs(part.part().partKind())) {
      if (isFaultSeen(sign)) {
        Evidence seen = new Evidence.Stated(part.part().place(), sign.name(), "seen");
        found.put(seen, sign.meaning());
      }
    }
    return found;
  }

  /**
   * What rules spoke of. A sign that asks for a look at another part is answered by that look; a
   * reading beyond its limit is answered only by a reason that still stands for the part itself.
   */
  private Set<Evidence> answered() {
    Stream<Evidence> signs =
        findingsOfJob.stream()
            .filter(finding -> finding.facts().stream().anyMatch(this::isThisPart))
            .flatMap(finding -> EvidenceOf.finding(finding).stream())
            .filter(Evidence.Stated.class::isInstance);
    Stream<Evidence> own = reasons.stream().flatMap(reason -> reason.evidence().stream());
    return Stream.concat(signs, own).collect(Collectors.toSet());
  }

  private boolean isThisPart(Object fact) {
    return fact instanceof Part other && other.place().equals(part.part().place());
  }

  /** Every sign is a fault, but those that the points call good. */
  private boolean isFaultSeen(Property sign) {
    return part.shows(sign, Sign.SEEN)
        && points.stream()
            .filter(point -> point.ofPart() && point.property().name().equals(sign.name()))
            .noneMatch(point -> point.finds() == Finds.GOOD);
  }
}
