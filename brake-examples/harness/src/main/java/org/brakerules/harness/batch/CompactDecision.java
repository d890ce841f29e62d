package org.brakerules.harness.batch;

import java.time.LocalDate;
import java.util.List;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Place;

/**
 * The answer to a job as far as a line of the compact form tells it. Whoever decides jobs can make
 * one; sentences, titles and sources are no part of it.
 *
 * @param reference the shop's own name for the job; may be empty
 * @param date the day of the inspection
 * @param ruleSet the id of the rules that hold on the road
 * @param parts one answer per part, in path order
 * @param cautions the ids of the cautions for this work
 */
public record CompactDecision(
    String reference, LocalDate date, String ruleSet, List<Part> parts, List<String> cautions) {

  /** Keeps its own copies of the lists. */
  public CompactDecision {
    parts = List.copyOf(parts);
    cautions = List.copyOf(cautions);
  }

  /**
   * The answer for one part.
   *
   * @param part the part
   * @param disposition what to do with it
   * @param hold whether work on it must stop
   * @param road what the rule set of the job says about it on the road
   * @param reasons every reason, the gravest first
   * @param checks every reading inside its limit
   * @param open what must still be looked at, measured or stated
   */
  public record Part(
      Place part,
      Disposition disposition,
      boolean hold,
      RoadAnswer road,
      List<Reason> reasons,
      List<Check> checks,
      List<OpenPoint> open) {

    /** Keeps its own copies of the lists. */
    public Part {
      reasons = List.copyOf(reasons);
      checks = List.copyOf(checks);
      open = List.copyOf(open);
    }
  }

  /**
   * A reason: which rule spoke, and what it rests on.
   *
   * @param rule the id of the rule
   * @param verdict what the rule says
   * @param evidence what the reason rests on
   */
  public record Reason(String rule, Verdict verdict, List<Evidence> evidence) {

    /** Keeps its own copy of the list. */
    public Reason {
      evidence = List.copyOf(evidence);
    }
  }

  /**
   * Something still needed.
   *
   * @param point the id of the inspection point
   * @param why why it is needed now
   */
  public record OpenPoint(String point, String why) {}

  /** Whether there is an answer, every part is decided, and none stops work. */
  public boolean complete() {
    return !parts.isEmpty()
        && parts.stream()
            .noneMatch(one -> one.hold() || one.disposition() == Disposition.UNDECIDED);
  }

  /** What a line tells of a decision of the rule base. */
  public static CompactDecision of(JobDecision decision) {
    return new CompactDecision(
        decision.reference(),
        decision.date(),
        decision.ruleSet().toString(),
        decision.decisions().stream().map(CompactDecision::part).toList(),
        decision.cautions().stream().map(Caution::id).toList());
  }

  private static Part part(Decision decision) {
    return new Part(
        decision.part(),
        decision.disposition(),
        decision.hold(),
        decision.road(),
        decision.reasons().stream()
            .map(reason -> new Reason(reason.rule(), reason.verdict(), reason.evidence()))
            .toList(),
        decision.passed(),
        decision.needed().stream().map(CompactDecision::open).toList());
  }

  private static OpenPoint open(Needed needed) {
    return new OpenPoint(needed.point(), needed.why());
  }
}
