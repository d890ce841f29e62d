package org.brakerules.benchmark.oracle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.brakerules.benchmark.oracle.Point.When;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Scope;

/**
 * What all that was found and said of one part comes to. Nothing is good that was not looked at.
 */
final class Conclusion {

  private static final OracleReason ALL_LOOKED_AT = new OracleReason("GENERAL-010", Verdict.REUSE);
  private static final OracleReason STILL_OPEN = new OracleReason("GENERAL-020", Verdict.UNDECIDED);
  private static final OracleReason NOT_MENTIONED =
      new OracleReason("GENERAL-030", Verdict.UNDECIDED);
  private static final OracleReason MISSING = new OracleReason("GENERAL-050", Verdict.UNDECIDED);
  private static final OracleReason UNANSWERED = new OracleReason("GENERAL-060", Verdict.UNDECIDED);
  private static final OracleReason NOT_LAID_OPEN =
      new OracleReason("GENERAL-070", Verdict.UNDECIDED);

  private record Ranked(OracleReason reason, boolean isConsequence) implements Comparable<Ranked> {

    /** A hold first, then the worst; what was found on the part before what neighbours bring. */
    @Override
    public int compareTo(Ranked other) {
      if (isHold() != other.isHold()) {
        return isHold() ? -1 : 1;
      }
      int milder = other.disposition().compareTo(disposition());
      if (milder != 0 || isConsequence != other.isConsequence) {
        return milder == 0 ? Boolean.compare(isConsequence, other.isConsequence) : milder;
      }
      return reason.rule().compareTo(other.reason.rule());
    }

    boolean isHold() {
      return reason.verdict() == Verdict.HOLD;
    }

    Disposition disposition() {
      return reason.verdict().disposition();
    }
  }

  private final Facts part;
  private final Scope scope;
  private final List<Said> said;
  private final List<String> open = new ArrayList<>();
  private final List<Ranked> reasons = new ArrayList<>();
  private boolean needsAnything;
  private long openSet;
  private long answeredLimits;
  private Disposition worst = Disposition.REUSE;

  private Conclusion(Bench bench, Facts part) {
    this.part = part;
    this.scope = bench.job().scope();
    this.said = standing(bench, part.findings().said());
  }

  static OracleDecision of(Bench bench, Facts part) {
    Conclusion conclusion = new Conclusion(bench, part);
    conclusion.look();
    conclusion.reason();
    return conclusion.decision();
  }

  private static List<Said> standing(Bench bench, List<Said> said) {
    List<Said> standing = new ArrayList<>(said.size());
    for (Said one : said) {
      if (bench.replacements().stands(one)) {
        standing.add(one);
      }
    }
    return standing;
  }

  /** Finds what is still open; of a part that is missing nothing is. */
  private void look() {
    long looks = 0;
    long again = 0;
    for (Said one : said) {
      looks |= one.effect().verdict() == Verdict.LOOK_AT ? one.asks() : 0;
      again |= one.effect().verdict() == Verdict.MEASURE_AGAIN ? one.asks() : 0;
    }
    for (Point point : Trade.points(part.kind())) {
      boolean needed = isNeeded(point);
      needsAnything |= needed;
      boolean isOpen =
          (again & point.bit()) != 0
              || ((needed || (looks & point.bit()) != 0) && isUnknown(point));
      if (isOpen && !part.missing()) {
        open.add(point.id());
        openSet |= point.bit();
      }
    }
  }

  private boolean isNeeded(Point point) {
    return point.when() != When.ON_DEMAND
        && scope.reaches(point.from())
        && point.which().fit(part) != Fit.NO
        && (point.when() == When.ALWAYS || mayHaveLimit(point));
  }

  /** Where the figure hangs on something unstated, asking for the reading is the safe side. */
  private boolean mayHaveLimit(Point point) {
    for (Held held : part.held()) {
      if (held.limit().property() == point.number() && (held.hasFigure() || held.hangs())) {
        return true;
      }
    }
    return false;
  }

  /** A measurement with limits is known once it is proven on which side of each it is. */
  private boolean isUnknown(Point point) {
    boolean hasLimit = false;
    if (point.measured()) {
      for (Held held : part.held()) {
        if (held.limit().property() == point.number()) {
          hasLimit = true;
          if (!held.isSettled()) {
            return true;
          }
        }
      }
    }
    return !hasLimit && (part.unknown() & point.bit()) != 0;
  }

  private void reason() {
    for (Said one : said) {
      if (one.asks() == 0 || (one.asks() & openSet) != 0) {
        add(one.effect().reason(), one.isConsequence());
        answeredLimits |= one.limits();
      }
    }
    if (worst != Disposition.REPLACE && isSomethingUnanswered()) {
      add(UNANSWERED, false);
    }
    if (worst != Disposition.REPLACE) {
      reasonFromLooks();
    }
    if (reasons.isEmpty()) {
      add(ALL_LOOKED_AT, false);
    }
    if (reasons.size() > 1) {
      Collections.sort(reasons);
    }
  }

  private void reasonFromLooks() {
    if (!part.mentioned()) {
      add(NOT_MENTIONED, false);
    } else if (part.missing()) {
      add(MISSING, false);
    } else if (!open.isEmpty()) {
      add(STILL_OPEN, false);
    } else if (!needsAnything) {
      add(NOT_LAID_OPEN, false);
    }
  }

  /** A finding that no sentence speaks of never lets a part pass. */
  private boolean isSomethingUnanswered() {
    return (part.seen() & ~Trade.good(part.kind()) & ~part.findings().answered()) != 0
        || (part.beyond() & ~answeredLimits) != 0;
  }

  private void add(OracleReason reason, boolean isConsequence) {
    worst = worst.worse(reason.verdict().disposition());
    reasons.add(new Ranked(reason, isConsequence));
  }

  private OracleDecision decision() {
    boolean hold = false;
    List<OracleReason> each = new ArrayList<>(reasons.size());
    for (Ranked ranked : reasons) {
      hold |= ranked.isHold();
      if (each.isEmpty() || !each.get(each.size() - 1).equals(ranked.reason)) {
        each.add(ranked.reason);
      }
    }
    return new OracleDecision(worst, hold, each, checks(), open);
  }

  private List<OracleCheck> checks() {
    List<OracleCheck> checks = new ArrayList<>(part.held().size());
    for (Held held : part.held()) {
      checks.add(held.check());
    }
    return checks;
  }
}
