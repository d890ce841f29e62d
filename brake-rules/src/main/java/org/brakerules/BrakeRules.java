package org.brakerules;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.compare.RuleSetComparison;
import org.brakerules.figure.JobFigures;
import org.brakerules.finalcheck.FinalCheck;
import org.brakerules.internal.RuleBase;
import org.brakerules.internal.WorkTables;
import org.brakerules.internal.decide.PointsBefore;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.figure.FiguresMaker;
import org.brakerules.internal.finalcheck.FinalMaker;
import org.brakerules.internal.parts.PartsMaker;
import org.brakerules.internal.table.Fingerprint;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.RuleBasePack;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.work.PlanMaker;
import org.brakerules.limit.Limit;
import org.brakerules.model.assembly.AssemblyRecord;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.parts.Item;
import org.brakerules.parts.KitCover;
import org.brakerules.parts.PartsList;
import org.brakerules.record.JobRecord;
import org.brakerules.vehicle.VehicleStatus;
import org.brakerules.work.WorkPlan;

/**
 * The rule base. Load it once and share it: it is immutable, and any number of threads may ask it
 * at once.
 *
 * <pre>{@code
 * BrakeRules rules = BrakeRules.standard();
 * JobDecision decision = rules.decide(job);
 * }</pre>
 *
 * <p>The answer is advice for a qualified brake technician. The maker's manual and the law where
 * the vehicle runs decide.
 */
public final class BrakeRules {

  private final RuleBase base;
  private final Tables tables;
  private final WorkTables work;

  private BrakeRules(RuleBase base) {
    this.base = base;
    this.tables = base.tables();
    this.work = new WorkTables(tables);
  }

  /** The standard rule base that this artifact brings. It is loaded at the first call. */
  public static BrakeRules standard() {
    return Standard.RULES;
  }

  /** Loaded at first use, by the rule of class initialisation. */
  private static final class Standard {
    static final BrakeRules RULES = load();
  }

  private static BrakeRules load() {
    RuleBasePack pack = RuleBasePack.ofThisArtifact();
    Tables tables = Tables.load(pack);
    return new BrakeRules(
        new RuleBase(tables, RuleEngine.load(tables, pack), Fingerprint.ofRuleBase(pack)));
  }

  /**
   * Decides a job.
   *
   * @throws JobRefusedException if the job names a rule set, or a limit of the maker, that this
   *     rule base does not know
   */
  public JobDecision decide(BrakeJob job) {
    return base.decide(job);
  }

  /**
   * Decides a job under its own rule set and under another, to be held side by side.
   *
   * @param job the job
   * @param other the rule set to compare with; a maker's limit of the job holds under both
   * @throws JobRefusedException if there is no such rule set, and as {@link #decide}
   */
  public RuleSetComparison compare(BrakeJob job, RuleSet other) {
    return new RuleSetComparison(decide(job), decide(job.under(other)));
  }

  /**
   * Everything that can be worked out from the readings of a job, with the work shown.
   *
   * @throws JobRefusedException if the job names a rule set or limit this rule base does not know
   */
  public JobFigures figures(BrakeJob job) {
    JobDecision decision = decide(job);
    FiguresMaker maker = new FiguresMaker(job, tables, decision.decisions());
    return new JobFigures(
        version(), job.reference(), job.date(), job.ruleSet(), maker.wheelEnds(), maker.vehicle());
  }

  /**
   * What axles and vehicle come to: what is unlike at the two ends of an axle, how many brakes
   * count as defective, and what published criteria say of that.
   *
   * @throws JobRefusedException if the job names a rule set or limit this rule base does not know
   */
  public VehicleStatus vehicle(BrakeJob job) {
    return work.vehicle().of(job, decide(job));
  }

  /**
   * The parts list of a job: what to order, to keep, to save from the worn shoes and to look at.
   *
   * @throws JobRefusedException if the job names a rule set or limit this rule base does not know
   */
  public PartsList parts(BrakeJob job) {
    return partsMaker(job).list();
  }

  /**
   * The parts list of a job with the kits of a shelf that cover it best.
   *
   * @throws JobRefusedException if the job names a rule set or limit this rule base does not know
   * @throws IllegalArgumentException if a kit holds what is none of the {@link #items}
   */
  public KitCover parts(BrakeJob job, KitShelf shelf) {
    return partsMaker(job).cover(shelf);
  }

  private PartsMaker partsMaker(BrakeJob job) {
    return partsMaker(job, decide(job));
  }

  private PartsMaker partsMaker(BrakeJob job, JobDecision decision) {
    return new PartsMaker(job, decision, work.parts());
  }

  /** Everything a parts list or a kit can hold, in the order of parts lists. */
  public List<Item> items() {
    return work.parts().all();
  }

  /**
   * The work of a job in one order, from the vehicle's arrival to the last proof: what is done, the
   * cautions, the points at which nobody goes on until they pass, and what is written down.
   *
   * @throws JobRefusedException as {@link #decide}
   */
  public WorkPlan plan(BrakeJob job) {
    return plan(job, decide(job));
  }

  private WorkPlan plan(BrakeJob job, JobDecision decision) {
    FiguresMaker figures = new FiguresMaker(job, tables, decision.decisions());
    return new PlanMaker(
            job,
            tables,
            work.steps(),
            decision,
            figures.wheelEnds(),
            partsMaker(job, decision).list())
        .plan();
  }

  /**
   * What was recorded of the finished work, judged against its plan. A wheel end is released only
   * when everything its plan needs has passed; an undecided part or a hold never releases.
   *
   * @throws JobRefusedException as {@link #decide}
   * @throws org.brakerules.finalcheck.RecordRefusedException if the record names a wheel end the
   *     job does not have, or a check its plan does not ask for
   */
  public FinalCheck finalCheck(BrakeJob job, AssemblyRecord record) {
    JobDecision decision = decide(job);
    WorkPlan plan = plan(job, decision);
    return new FinalMaker(job, tables, work.finalChecks(), decision, plan, record).check();
  }

  /**
   * The record of a job whose work is not finished, to be filed.
   *
   * @throws JobRefusedException as {@link #decide}
   */
  public JobRecord record(BrakeJob job) {
    return new JobRecord(job, decide(job), Optional.empty(), work.retention().under(job.ruleSet()));
  }

  /**
   * The record of a job with its finished work, to be filed.
   *
   * @throws JobRefusedException as {@link #decide}
   * @throws org.brakerules.finalcheck.RecordRefusedException as {@link #finalCheck}
   */
  public JobRecord record(BrakeJob job, AssemblyRecord finished) {
    return new JobRecord(
        job,
        decide(job),
        Optional.of(finalCheck(job, finished)),
        work.retention().under(job.ruleSet()));
  }

  /**
   * Which condition kept a rule from firing on a job, in words with the values of the job; empty if
   * the rule fires.
   *
   * @param job the job
   * @param ruleId the id of the rule, such as {@code CAMSHAFT-BUSHING-010}
   * @throws IllegalArgumentException if there is no such rule
   * @throws JobRefusedException as {@link #decide}
   */
  public Optional<String> whyNot(BrakeJob job, String ruleId) {
    return base.whyNot(job, ruleId);
  }

  /**
   * What each rule that could concern a part says of it: that it speaks, or which of its conditions
   * do not hold.
   *
   * <pre>{@code
   * rules.why(job, decision.part()).forEach(answer -> ...);
   * }</pre>
   *
   * @param job the job
   * @param part a part of one of its decisions
   * @return one answer per rule, in the order of their ids; empty if no rule speaks of such parts
   * @throws JobRefusedException as {@link #decide}
   */
  public List<RuleAnswer> why(BrakeJob job, Place part) {
    return base.why(job, part);
  }

  /**
   * What to look at and measure before anything is decided, under every rule set.
   *
   * @param layout how the brake is built
   * @param scope how far it will be taken apart
   * @param date the day of the inspection
   */
  public List<InspectionPoint> inspectionPoints(Layout layout, Scope scope, LocalDate date) {
    return ruleSets().keySet().stream()
        .sorted()
        .flatMap(id -> inspectionPoints(layout, scope, date, new RuleSet(id)).stream())
        .distinct()
        .sorted(Comparator.comparing(InspectionPoint::part).thenComparing(InspectionPoint::station))
        .toList();
  }

  /**
   * What to look at and measure before anything is decided.
   *
   * @param layout how the brake is built
   * @param scope how far it will be taken apart
   * @param date the day of the inspection
   * @param ruleSet the rules that hold on the road
   */
  public List<InspectionPoint> inspectionPoints(
      Layout layout, Scope scope, LocalDate date, RuleSet ruleSet) {
    return new PointsBefore(tables, date, ruleSet).of(layout, scope);
  }

  /** Every rule, in the order of components and ids. */
  public List<Rule> rules() {
    return base.rules();
  }

  /**
   * The folders of the rule base, from the camshaft outwards; each is named after what it holds.
   */
  public List<String> components() {
    return Tables.components();
  }

  /** Every row of every limit table, in the order of the tables. */
  public List<Limit> limits() {
    return tables.limits().rows().map(LimitRow::limit).toList();
  }

  /** Every limit that holds on a day, under any rule set. */
  public List<Limit> limits(LocalDate date) {
    return tables
        .limits()
        .rows()
        .map(LimitRow::limit)
        .filter(limit -> limit.holds(date, limit.ruleSet().orElse(new RuleSet("any"))))
        .toList();
  }

  /** The rule sets a job may name, with their titles. */
  public Map<String, String> ruleSets() {
    return tables.ruleSets().titles();
  }

  /** The version and fingerprint that every decision carries. */
  public RuleBaseVersion version() {
    return base.version();
  }
}
