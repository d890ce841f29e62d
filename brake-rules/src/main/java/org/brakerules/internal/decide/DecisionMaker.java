package org.brakerules.internal.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.RuleAnswer;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.fact.BeyondLimit;
import org.brakerules.internal.fact.Brake;
import org.brakerules.internal.fact.Disturbed;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Point.Finds;
import org.brakerules.internal.table.RulesOffTable;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.Fitted;
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

  /** Prepares to decide one job. */
  public DecisionMaker(BrakeJob job, Tables tables, RuleEngine engine) {
    this.job = job;
    this.tables = tables;
    this.engine = engine.without(tables.rulesOff().under(job.ruleSet()));
    this.all = engine;
    this.checks = Checks.of(tables, job);
  }

  /** One decision per part, in path order. */
  public List<Decision> decide() {
    List<InspectedPart> parts = InspectedParts.of(job, checks);
    List<Finding> findings = new Consequences(engine.fire(facts(parts))).withoutCircles();
    RoadJudge road = new RoadJudge(tables, engine.rules(), job.ruleSet(), checks);
    Map<Place, List<Finding>> ofPart =
        findings.stream().collect(Collectors.groupingBy(one -> one.part().place()));
    return parts.stream()
        .map(
            part ->
                decide(part, ofPart.getOrDefault(part.part().place(), List.of()), findings, road))
        .toList();
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
    List<Object> facts = withMarkers(parts);
    Predicate<Object> isPart = fact -> fact instanceof Part part && part.place().equals(place);
    return all.rules().stream()
        .filter(rule -> rule.subject() == place.kind())
        .map(
            rule ->
                new RuleAnswer(
                    rule.id(),
                    rule.title(),
                    rule.verdict(),
                    whyNot(rule.id(), parts, facts, isPart)))
        .toList();
  }

  private Optional<String> whyNot(
      String ruleId, List<InspectedPart> parts, List<Object> facts, Predicate<Object> speaksOf) {
    return tables
        .rulesOff()
        .of(job.ruleSet(), ruleId)
        .map(this::switchedOff)
        .or(() -> new WhyNotFired(parts).inWords(engine.whyNot(ruleId, facts, speaksOf)));
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
    List<Object> facts = facts(parts);
    engine.fire(facts).stream()
        .flatMap(finding -> finding.marker().stream())
        .distinct()
        .forEach(facts::add);
    return facts;
  }

  /** The facts of the job, and the parts that the rules replace. */
  public List<Object> facts() {
    return withMarkers(InspectedParts.of(job, checks));
  }

  /** On which facts of the job each rule matches, variants among them, by the name of the rule. */
  public Map<String, Set<List<Object>>> matches() {
    return engine.matches(facts(InspectedParts.of(job, checks)));
  }

  private Decision decide(
      InspectedPart part, List<Finding> findings, List<Finding> all, RoadJudge road) {
    Place place = part.part().place();
    List<Point> points = tables.points().of(place.kind());
    OpenPoints open = new OpenPoints(points, tables.limits(), checks, job.scope());
    List<Needed> needed =
        part.part().presence() == Presence.MISSING ? List.of() : open.of(part, findings);
    boolean judged = points.stream().anyMatch(one -> open.isNeeded(part, one));
    List<Reason> reasons =
        new Reasons(part, points, findings, all, needed, judged, job.scope()).all();
    return new Decision(
        place,
        reasons.stream()
            .map(reason -> reason.verdict().disposition())
            .reduce(Disposition.REUSE, Disposition::worse),
        reasons.stream().anyMatch(reason -> reason.verdict() == Verdict.HOLD),
        road.answer(part, reasons),
        reasons.stream().map(this::underTheLawOfTheJob).toList(),
        needed,
        part.checks(CheckStatus.WITHIN),
        lookedAt(part, points));
  }

  /** A reader must not take a law of another place for one that holds here. */
  private Reason underTheLawOfTheJob(Reason reason) {
    return new Reason(
        reason.rule(),
        reason.title(),
        reason.verdict(),
        reason.sentence(),
        reason.action(),
        reason.evidence(),
        reason.source().stream()
            .map(source -> tables.sources().under(job.ruleSet(), source))
            .toList());
  }

  private static List<String> lookedAt(InspectedPart part, List<Point> points) {
    return points.stream()
        .filter(point -> point.ofPart() && point.property().isSign())
        .filter(
            point ->
                part.shows(
                    point.property(), point.finds() == Finds.GOOD ? Sign.SEEN : Sign.NOT_SEEN))
        .map(Point::id)
        .toList();
  }

  private List<Object> facts(List<InspectedPart> parts) {
    List<Object> facts = new ArrayList<>();
    for (VehicleUnit unit : job.units()) {
      Fitted automaticAdjuster = automaticAdjuster(unit);
      for (Axle axle : unit.axles()) {
        axle.wheelEnds().forEach(end -> facts.add(brake(axle, end, automaticAdjuster)));
        axle.wheelEnds().forEach(end -> facts.addAll(Contradictions.of(end)));
        facts.addAll(AcrossAxle.differences(axle));
      }
    }
    for (InspectedPart part : parts) {
      if (part.inspected()) {
        facts.add(part.part());
        markers(part).forEach(facts::add);
      }
    }
    return facts;
  }

  private Brake brake(Axle axle, WheelEnd end, Fitted automaticAdjuster) {
    return new Brake(end.path(), axle.kind(), end.layout(), job.scope(), automaticAdjuster);
  }

  /** What the law of the job says of a vehicle built on that day. */
  private Fitted automaticAdjuster(VehicleUnit unit) {
    Optional<LocalDate> from = tables.ruleSets().automaticAdjustersFrom(job.ruleSet());
    if (from.isEmpty()) {
      return Fitted.NO;
    }
    return unit.builtOn()
        .map(built -> built.isBefore(from.get()) ? Fitted.NO : Fitted.YES)
        .orElse(Fitted.UNKNOWN);
  }

  private Stream<Object> markers(InspectedPart inspected) {
    Part part = inspected.part();
    Stream<Object> beyond =
        inspected.checks(CheckStatus.BEYOND).stream()
            .map(check -> new BeyondLimit(check.limitId(), part.condition(), check));
    return part.tag().disturbed(job.scope())
        ? Stream.concat(beyond, Stream.of(new Disturbed(part.place(), part.condition())))
        : beyond;
  }
}
