package org.brakerules.model.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.EarlierLining;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.job.ShimsAtHand;
import org.brakerules.model.job.StatedSize;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.part.Scope;

/**
 * Puts a job together from the tree of its document. A value with a problem is replaced by any good
 * one, so that the rest is looked at as well; the job is built only if there was no problem.
 */
final class JobAssembly {

  /** The form of names that end up in paths and file names. */
  static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");

  static final String JOB = "a brake job: an object in braces";
  private static final String RULE_SET =
      "the rule set in lower-case letters, digits and hyphens, such as \"us-federal\"";
  private static final Names<Acceptance> ACCEPTANCES = Names.of(Acceptance.class);
  private static final Names<Scope> SCOPES = Names.of(Scope.class);
  private static final String SCOPE = "how far apart the brakes are: " + Shown.oneOf(SCOPES.all());
  private static final String NO_RULE_SET = "none";

  private final Problems problems;
  private final Values values;

  JobAssembly(Problems problems) {
    this.problems = problems;
    this.values = new Values(problems);
  }

  /** Reads the job; empty if there is a problem. */
  Optional<BrakeJob> job(Node root) {
    return Fields.of(root, JOB, problems).flatMap(fields -> job(root, fields));
  }

  private Optional<BrakeJob> job(Node root, Fields fields) {
    String reference = fields.optional("reference").flatMap(values::text).orElse("");
    Optional<LocalDate> date = fields.required("date", Values.DATE).flatMap(values::date);
    RuleSet ruleSet = ruleSet(fields);
    Scope scope = scope(fields);
    Acceptance acceptance =
        fields
            .optional("acceptance")
            .flatMap(node -> values.choice(node, ACCEPTANCES))
            .orElse(Acceptance.GUARDED_IF_STATED);
    List<ShimsAtHand> shims = new ShimsReader(values).shims(fields.optional("shimsAtHand"));
    Optional<Node> sizes = fields.optional("sizes");
    Optional<Node> earlier = fields.optional("earlierLinings");
    Optional<Node> makersLimits = fields.optional("makersLimits");
    int before = problems.count();
    List<VehicleUnit> units = new UnitReader(values, date.orElse(LocalDate.MAX)).units(fields);
    WheelEndNames wheelEnds = WheelEndNames.of(problems.count() == before ? units : List.of());
    List<MakersLimit> limits = new MakersLimitReader(wheelEnds, values).limits(makersLimits);
    List<StatedSize> stated = new SizeReader(wheelEnds, values).sizes(sizes);
    List<EarlierLining> linings =
        new EarlierLiningReader(wheelEnds, values, date.orElse(LocalDate.MAX)).linings(earlier);
    fields.refuseOthers();
    return problems.count() > 0
        ? Optional.empty()
        : problems.build(
            root,
            () ->
                new BrakeJob(
                    reference,
                    date.orElseThrow(),
                    ruleSet,
                    scope,
                    acceptance,
                    shims,
                    stated,
                    linings,
                    limits,
                    units));
  }

  private RuleSet ruleSet(Fields fields) {
    return new RuleSet(
        fields
            .required("ruleSet", RULE_SET)
            .flatMap(node -> values.text(node, NAME, RULE_SET))
            .orElse(NO_RULE_SET));
  }

  private Scope scope(Fields fields) {
    return fields
        .required("scope", SCOPE)
        .flatMap(node -> values.choice(node, SCOPES))
        .orElse(Scope.WHEEL_ON);
  }
}
