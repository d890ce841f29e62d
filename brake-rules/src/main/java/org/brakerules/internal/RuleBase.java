package org.brakerules.internal;

import java.util.List;
import java.util.Optional;
import org.brakerules.Rule;
import org.brakerules.RuleAnswer;
import org.brakerules.internal.decide.Bearings;
import org.brakerules.internal.decide.DecisionMaker;
import org.brakerules.internal.decide.WhatNext;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;

/** A rule base that decides: the one of this artifact, or one on trial. */
public final class RuleBase {

  private final Tables tables;
  private final RuleEngine engine;
  private final WhatNext whatNext;
  private final RuleBaseVersion version;

  /**
   * Puts tables and rules together.
   *
   * @throws org.brakerules.internal.table.RuleBaseException if a rule set switches off a rule that
   *     there is not
   */
  public RuleBase(Tables tables, RuleEngine engine, RuleBaseVersion version) {
    tables.rulesOff().check(engine.rules().stream().map(RuleText::id).toList());
    this.tables = tables;
    this.engine = engine;
    this.whatNext = new WhatNext(tables.points(), new Bearings(tables, engine.rules()));
    this.version = version;
  }

  /** Everything it knows beside its rules. */
  public Tables tables() {
    return tables;
  }

  /** Its rules as the engine asks them. */
  public RuleEngine engine() {
    return engine;
  }

  /** Its rules as a reader sees them, in the order of components and ids. */
  public List<Rule> rules() {
    return engine.rules().stream().map(RuleBase::rule).toList();
  }

  private static Rule rule(RuleText text) {
    return new Rule(
        text.id(),
        text.component(),
        text.title(),
        text.because().text(),
        text.action().text(),
        text.sources(),
        text.verdict(),
        text.reads(),
        text.text());
  }

  /** Which rule base it is. */
  public RuleBaseVersion version() {
    return version;
  }

  /**
   * Decides a job.
   *
   * @throws org.brakerules.JobRefusedException if the job names what this rule base does not know
   */
  public JobDecision decide(BrakeJob job) {
    admit(job);
    List<Decision> decisions = new DecisionMaker(job, tables, engine).decide();
    return new JobDecision(
        version,
        job.reference(),
        job.date(),
        job.ruleSet(),
        job.scope(),
        decisions,
        whatNext.of(decisions, job.scope()),
        tables.cautions().due(job.scope()));
  }

  /**
   * What each rule that could speak of a part says of it.
   *
   * @throws org.brakerules.JobRefusedException as {@link #decide}
   */
  public List<RuleAnswer> why(BrakeJob job, Place part) {
    admit(job);
    return new DecisionMaker(job, tables, engine).why(part);
  }

  /**
   * Which condition kept a rule from firing on a job; empty if it fires.
   *
   * @throws org.brakerules.JobRefusedException as {@link #decide}
   */
  public Optional<String> whyNot(BrakeJob job, String ruleId) {
    admit(job);
    return new DecisionMaker(job, tables, engine).whyNot(ruleId);
  }

  private void admit(BrakeJob job) {
    new JobAdmission(tables, job).check();
  }
}
