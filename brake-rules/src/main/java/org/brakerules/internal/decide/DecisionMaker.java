package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.brakerules.RuleAnswer;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Point.Finds;
import org.brakerules.internal.table.RulesOffTable;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Sign;

/**
 * Takes one job from its parts to one decision per part: readings are held against their limits,
 * the rules are asked, and what they found is put together with what is still open.
 */
public final class DecisionMaker {

  private final BrakeJob job;
  private final Tables tables;
  private final RuleEngine engine;
  private final RuleEngine all;
  private final Checks checks;
  private final JobFacts facts;

  /** Prepares to decide one job. */
  public DecisionMaker(BrakeJob job, Tables tables, RuleEngine engine) {
    this.job = job;
    this.tables = tables;
    this.engine = engine.without(tables.rulesOff().under(job.ruleSet()));
    this.all = engine;
    this.checks = Checks.of(tables, job);
    this.facts = new JobFacts(job, tables);
  }

  /** One decision per part, in path order. */
  public List<Decision> decide() {
    List<InspectedPart> parts = InspectedParts.of(job, checks);
    SaidOfJob said = new SaidOfJob(new Consequences(engine.fire(facts.of(parts))).withoutCircles());
    RoadJudge road = new RoadJudge(tables, engine.laws(), job.ruleSet(), checks);
    List<Decision> decisions = new ArrayList<>(parts.size());
    for (InspectedPart part : parts) {
      decisions.add(decide(part, said, road));
    }
    return decisions;
  }

  /**
   * Which condition kept a rule from firing on this job, in words; empty if it fires.
   *
   * @throws IllegalArgumentException if there is no such rule
   */
  public Optional<String> whyNot(String ruleId) {
    List<InspectedPart> parts = InspectedParts.of(job, checks);
    return whyNot(ruleId, parts, withMarkers(parts), fact -> true);
  }

  /** What each rule that could speak of a part says of it, in the order of the rules. */
  public List<RuleAnswer> why(Place place) {
    List<InspectedPart> parts = InspectedParts.of(job, checks);
    List<Object> withMarkers = withMarkers(parts);
    Predicate<Object> isPart = fact -> fact instanceof Part part && part.place().equals(place);
    return all.rules().stream()
        .filter(rule -> rule.subject() == place.kind())
        .map(
            rule ->
                new RuleAnswer(
                    rule.id(),
                    rule.title(),
                    rule.verdict(),
                    whyNot(rule.id(), parts, withMarkers, isPart)))
        .toList();
  }

  private Optional<String> whyNot(
      String ruleId,
      List<InspectedPart> parts,
      List<Object> withMarkers,
      Predicate<Object> speaksOf) {
    return tables
        .rulesOff()
        .of(job.ruleSet(), ruleId)
        .map(this::switchedOff)
        .or(() -> new WhyNotFired(parts).inWords(engine.whyNot(ruleId, withMarkers, speaksOf)));
  }

  private String switchedOff(RulesOffTable.Off off) {
    return "the rule set \""
        + job.ruleSet()
        + "\" does not have it: "
        + off.reason()
        + " ("
        + off.source().citation()
        + ")";
  }

  private List<Object> withMarkers(List<InspectedPart> parts) {
    List<Object> withMarkers = facts.of(parts);
    engine.fire(withMarkers).stream()
        .flatMap(finding -> finding.marker().stream())
        .distinct()
        .forEach(withMarkers::add);
    return withMarkers;
  }

  /** The facts of the job, and the parts that the rules replace. */
  public List<Object> facts() {
    return withMarkers(InspectedParts.of(job, checks));
  }

  /** On which facts of the job each rule matches, variants among them, by the name of the rule. */
  public Map<String, Set<List<Object>>> matches() {
    return engine.matches(facts.of(InspectedParts.of(job, checks)));
  }

  private Decision decide(InspectedPart part, SaidOfJob said, RoadJudge road) {
    Place place = part.part().place();
    List<Point> points = tables.points().of(place.kind());
    OpenPoints open = new OpenPoints(points, tables.limits(), checks, job.scope());
    List<Needed> needed =
        part.part().presence() == Presence.MISSING ? List.of() : open.of(part, said.of(place));
    List<Reason> reasons = new Reasons(part, open, said, needed, job.scope()).all();
    Disposition worst = Disposition.REUSE;
    boolean hold = false;
    List<Reason> underTheLaw = new ArrayList<>(reasons.size());
    for (Reason reason : reasons) {
      worst = worst.worse(reason.verdict().disposition());
      hold |= reason.verdict() == Verdict.HOLD;
      underTheLaw.add(underTheLawOfTheJob(reason));
    }
    return new Decision(
        place,
        worst,
        hold,
        road.answer(part, reasons),
        underTheLaw,
        needed,
        part.checks(CheckStatus.WITHIN),
        part.withoutLimit(),
        lookedAt(part, points));
  }

  /** A reader must not take a law of another place for one that holds here. */
  private Reason underTheLawOfTheJob(Reason reason) {
    List<Source> sources = tables.sources().under(job.ruleSet(), reason.source());
    return sources == reason.source()
        ? reason
        : new Reason(
            reason.rule(),
            reason.title(),
            reason.verdict(),
            reason.sentence(),
            reason.action(),
            reason.evidence(),
            sources);
  }

  private static List<String> lookedAt(InspectedPart part, List<Point> points) {
    List<String> lookedAt = new ArrayList<>(points.size());
    for (Point point : points) {
      if (point.ofPart() && part.shows(point.property(), good(point))) {
        lookedAt.add(point.id());
      }
    }
    return lookedAt;
  }

  private static Sign good(Point point) {
    return point.finds() == Finds.GOOD ? Sign.SEEN : Sign.NOT_SEEN;
  }
}
