package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Property;
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
          // What was found on the part says more than what its neighbours drag along.
          .thenComparing(Reason::isConsequence)
          .thenComparing(Reason::rule)
          .thenComparing(Reason::sentence)
          .thenComparing(reason -> reason.evidence().toString());

  /** Most parts of most jobs have this reason and no other, so that it is made once. */
  private static final Map<Scope, List<Reason>> ALL_LOOKED_AT =
      Arrays.stream(Scope.values())
          .collect(
              Collectors.toUnmodifiableMap(
                  scope -> scope, scope -> List.of(Reasons.allLookedAt(scope))));

  private final InspectedPart part;
  private final OpenPoints open;
  private final SaidOfJob said;
  private final List<Needed> needed;
  private final Scope scope;
  private final List<Reason> reasons = new ArrayList<>();

  Reasons(InspectedPart part, OpenPoints open, SaidOfJob said, List<Needed> needed, Scope scope) {
    this.part = part;
    this.open = open;
    this.said = said;
    this.needed = needed;
    this.scope = scope;
  }

  List<Reason> all() {
    for (Said one : said.of(part.part().place())) {
      if (isStillOpen(one.finding())) {
        addOnce(fromRule(one));
      }
    }
    unanswered().ifPresent(reasons::add);
    if (worst() != Disposition.REPLACE) {
      whyUndecided().ifPresent(reasons::add);
    }
    return inOrder();
  }

  /** The same sentence found on other facts is one reason. */
  private void addOnce(Reason reason) {
    if (!reasons.contains(reason)) {
      reasons.add(reason);
    }
  }

  private List<Reason> inOrder() {
    if (reasons.isEmpty()) {
      return Objects.requireNonNull(ALL_LOOKED_AT.get(scope));
    }
    if (reasons.size() == 1) {
      return List.of(reasons.get(0));
    }
    reasons.sort(GRAVEST_FIRST);
    return reasons;
  }

  /** A request to look at something is no reason any more once it was looked at. */
  private boolean isStillOpen(Finding finding) {
    if (finding.point().isEmpty()) {
      return true;
    }
    for (Needed one : needed) {
      if (one.point().equals(finding.point())) {
        return true;
      }
    }
    return false;
  }

  private static Reason fromRule(Said said) {
    Finding finding = said.finding();
    return new Reason(
        finding.rule().id(),
        finding.rule().title(),
        finding.verdict(),
        Wording.fill(finding.rule().because(), finding),
        Wording.fill(finding.rule().action(), finding),
        said.evidence(),
        finding.rule().sources());
  }

  private Disposition worst() {
    Disposition worst = Disposition.REUSE;
    for (Reason reason : reasons) {
      worst = worst.worse(reason.verdict().disposition());
    }
    return worst;
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
    return open.areAnyNeeded(part)
        ? Optional.empty()
        : Optional.of(
            GeneralRule.NOT_LAID_OPEN.reason(
                "With the brake this far apart (" + words(scope) + ") the part cannot be judged.",
                "Open the brake further, or state the scope that was reached.",
                List.of()));
  }

  private static Reason allLookedAt(Scope scope) {
    return GeneralRule.ALL_LOOKED_AT.reason(
        "Every look and reading this decision needs was taken, and none speaks against it."
            + whatTheScopeLeaves(scope),
        "",
        List.of());
  }

  /** What went unseen because the brake was not opened further is said, never passed over. */
  private static String whatTheScopeLeaves(Scope scope) {
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
    found.keySet().removeIf(this::isAnswered);
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
    List<Check> beyond = part.checks(CheckStatus.BEYOND);
    List<Property> faults = faultsSeen();
    if (beyond.isEmpty() && faults.isEmpty()) {
      return Map.of();
    }
    Map<Evidence, String> found = new LinkedHashMap<>();
    for (Check check : beyond) {
      found.put(new Evidence.Measured(check), "a reading beyond " + check.limitId());
    }
    for (Property sign : faults) {
      found.put(new Evidence.Stated(part.part().place(), sign.name(), "seen"), sign.meaning());
    }
    return found;
  }

  /**
   * What rules spoke of. A sign that asks for a look at another part is answered by that look; a
   * reading beyond its limit is answered only by a reason that still stands for the part itself.
   */
  private boolean isAnswered(Evidence evidence) {
    return said.signs().contains(evidence)
        || reasons.stream().anyMatch(reason -> reason.evidence().contains(evidence));
  }

  /** Every sign is a fault, but those that the points call good. */
  private List<Property> faultsSeen() {
    List<Property> faults = List.of();
    for (Property sign : Property.signs(part.part().partKind())) {
      if (part.shows(sign, Sign.SEEN) && !open.isGoodNews(sign)) {
        faults = faults.isEmpty() ? new ArrayList<>() : faults;
        faults.add(sign);
      }
    }
    return faults;
  }
}
