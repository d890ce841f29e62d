package org.brakerules.internal.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.internal.table.Subject;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.RuleSet;

/** The limits in force on the day of a job, under its rule set, with its maker's limits. */
public final class LimitsOfJob {

  private final LimitTable table;
  private final LocalDate date;
  private final RuleSet ruleSet;
  private final List<MakersLimit> makersLimits;

  /** Chooses from a table by date, rule set and maker's limits. */
  public LimitsOfJob(
      LimitTable table, LocalDate date, RuleSet ruleSet, List<MakersLimit> makersLimits) {
    this.table = table;
    this.date = date;
    this.ruleSet = ruleSet;
    this.makersLimits = makersLimits;
  }

  /** The rows of a limit that hold on the day and may fit a part. */
  public List<LimitRow> rows(String id, Subject subject) {
    List<LimitRow> named =
        table.rows(id).stream()
            .filter(row -> row.limit().holds(date, ruleSet))
            .filter(row -> !row.selector().isOtherwise())
            .filter(row -> row.selector().fit(subject) != Fit.NO)
            .toList();
    return named.isEmpty() ? otherwise(id) : named;
  }

  /** Whether a limit has a row that holds on the day under the rule set, for whatever part. */
  boolean isOfThisJob(String id) {
    return table.rows(id).stream().anyMatch(row -> row.limit().holds(date, ruleSet));
  }

  private List<LimitRow> otherwise(String id) {
    return table.rows(id).stream()
        .filter(row -> row.limit().holds(date, ruleSet))
        .filter(row -> row.selector().isOtherwise())
        .toList();
  }

  /** What must be stated of a part before a limit can be chosen for it. */
  List<String> unstated(String id, Subject subject) {
    return rows(id, subject).stream()
        .flatMap(row -> row.unstated(subject).stream())
        .distinct()
        .toList();
  }

  /**
   * The limits that hold for a part: the maker's, and the table's where there is none of the maker
   * or where it is a law of the job's rule set, which no maker can displace.
   */
  List<AppliedLimit> inForce(String id, Subject subject) {
    List<AppliedLimit> limits = new ArrayList<>();
    List<LimitRow> fitting =
        rows(id, subject).stream().filter(row -> isSurelyFor(row, subject)).toList();
    Optional<AppliedLimit> makers = makers(id, subject);
    for (LimitRow row : fitting) {
      if (makers.isEmpty() || isLaw(row)) {
        row.inForce(subject.layout())
            .ifPresent(limit -> limits.add(new AppliedLimit(row.limit(), limit)));
      }
    }
    makers.ifPresent(limits::add);
    return limits;
  }

  /** Whether a law that hangs on what is not stated may hold for a part beside a maker's limit. */
  boolean isLawOpen(String id, Subject subject) {
    return ofMaker(id, subject).isPresent()
        && rows(id, subject).stream()
            .anyMatch(row -> isLaw(row) && !row.unstated(subject).isEmpty());
  }

  private boolean isLaw(LimitRow row) {
    return row.law().filter(ruleSet::equals).isPresent();
  }

  private static boolean isSurelyFor(LimitRow row, Subject subject) {
    return row.selector().fit(subject) == Fit.YES;
  }

  private Optional<AppliedLimit> makers(String id, Subject subject) {
    return ofMaker(id, subject)
        .flatMap(one -> readAs(id, subject).map(row -> new AppliedLimit(row, asMakers(row, one))));
  }

  private Optional<MakersLimit> ofMaker(String id, Subject subject) {
    String path = subject.part().place().toString();
    return makersLimits.stream()
        .filter(one -> one.limit().equals(id) && one.covers(path))
        .reduce(LimitsOfJob::narrower);
  }

  private static MakersLimit narrower(MakersLimit one, MakersLimit other) {
    return one.on().length() > other.on().length() ? one : other;
  }

  /**
   * The row that says where and how a reading is taken for a maker's limit: that of the part. Where
   * none is surely for it the rule set's own way is the likeliest, and where the rule set has no
   * such limit any row tells the property at least.
   */
  private Optional<Limit> readAs(String id, Subject subject) {
    Stream<LimitRow> ofPart = rows(id, subject).stream().filter(row -> isSurelyFor(row, subject));
    Stream<LimitRow> ofDay =
        table.rows(id).stream().filter(row -> row.limit().holds(date, ruleSet));
    return Stream.of(ofPart, ofDay, table.rows(id).stream())
        .flatMap(rows -> rows)
        .map(LimitRow::limit)
        .findFirst();
  }

  private static LimitInForce asMakers(Limit row, MakersLimit makers) {
    Source source = new Source("MAKER", makers.page(), makers.document(), Standing.MAKER);
    return new LimitInForce(
        row.id(), row.comparison(), makers.value(), makers.value().toString(), source);
  }
}
