package org.brakerules.internal.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.LimitsOfDay;
import org.brakerules.internal.table.Subject;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.RuleSet;

/** The limits in force on the day of a job, under its rule set, with its maker's limits. */
public final class LimitsOfJob {

  private final LimitTable table;
  private final LimitsOfDay ofDay;
  private final RuleSet ruleSet;
  private final Map<String, List<OfMaker>> makersLimits;

  /**
   * A limit of a maker, with what is the same for every part it covers.
   *
   * @param limit the limit as the job has it
   * @param written its value as a reader sees it
   * @param source the page it was read on
   */
  private record OfMaker(MakersLimit limit, String written, Source source) {

    static OfMaker of(MakersLimit limit) {
      Source source = new Source("MAKER", limit.page(), limit.document(), Standing.MAKER);
      return new OfMaker(limit, limit.value().toString(), source);
    }
  }

  /** Chooses from a table by date, rule set and maker's limits. */
  public LimitsOfJob(
      LimitTable table, LocalDate date, RuleSet ruleSet, List<MakersLimit> makersLimits) {
    this.table = table;
    this.ofDay = table.on(date, ruleSet);
    this.ruleSet = ruleSet;
    this.makersLimits =
        makersLimits.isEmpty()
            ? Map.of()
            : makersLimits.stream()
                .map(OfMaker::of)
                .collect(Collectors.groupingBy(one -> one.limit().limit()));
  }

  /** The rows of a limit that hold on the day and may fit a part. */
  public List<LimitRow> rows(String id, Subject subject) {
    return ofDay.rows(id, subject);
  }

  /** Whether a limit has a row that holds on the day under the rule set, for whatever part. */
  boolean isOfThisJob(String id) {
    return !ofDay.all(id).isEmpty();
  }

  /** What must be stated of a part before a limit can be chosen for it. */
  List<String> unstated(String id, Subject subject) {
    List<String> unstated = new ArrayList<>();
    for (LimitRow row : rows(id, subject)) {
      for (String attribute : row.unstated(subject)) {
        if (!unstated.contains(attribute)) {
          unstated.add(attribute);
        }
      }
    }
    return unstated;
  }

  /** Whether anything must be stated of a part before a limit can be chosen for it. */
  boolean isUnstated(String id, Subject subject) {
    for (LimitRow row : rows(id, subject)) {
      if (!row.unstated(subject).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /**
   * The limits that hold for a part: the maker's, and the table's where there is none of the maker
   * or where it is a law of the job's rule set, which no maker can displace.
   */
  List<AppliedLimit> inForce(String id, Subject subject) {
    List<LimitRow> fitting = ofDay.surely(id, subject);
    Optional<OfMaker> makers = ofMaker(id, subject);
    List<AppliedLimit> limits = new ArrayList<>(2);
    for (LimitRow row : fitting) {
      if (makers.isEmpty() || isLaw(row)) {
        Optional<LimitInForce> limit = row.inForce(subject.layout());
        if (limit.isPresent()) {
          limits.add(new AppliedLimit(row, limit.get()));
        }
      }
    }
    if (makers.isPresent()) {
      readAs(id, fitting)
          .map(row -> new AppliedLimit(row, asMakers(row, makers.get())))
          .ifPresent(limits::add);
    }
    return limits;
  }

  /** Whether a law that hangs on what is not stated may hold for a part beside a maker's limit. */
  boolean isLawOpen(String id, Subject subject) {
    return makersLimits.containsKey(id)
        && ofMaker(id, subject).isPresent()
        && rows(id, subject).stream()
            .anyMatch(row -> isLaw(row) && !row.unstated(subject).isEmpty());
  }

  private boolean isLaw(LimitRow row) {
    return row.law().filter(ruleSet::equals).isPresent();
  }

  private Optional<OfMaker> ofMaker(String id, Subject subject) {
    List<OfMaker> ofLimit = makersLimits.getOrDefault(id, List.of());
    if (ofLimit.isEmpty()) {
      return Optional.empty();
    }
    String path = subject.part().place().toString();
    return ofLimit.stream().filter(one -> one.limit().covers(path)).reduce(LimitsOfJob::narrower);
  }

  private static OfMaker narrower(OfMaker one, OfMaker other) {
    return one.limit().on().length() > other.limit().on().length() ? one : other;
  }

  /**
   * The row that says where and how a reading is taken for a maker's limit: that of the part. Where
   * none is surely for it the rule set's own way is the likeliest, and where the rule set has no
   * such limit any row tells the property at least.
   */
  private Optional<LimitRow> readAs(String id, List<LimitRow> ofPart) {
    if (!ofPart.isEmpty()) {
      return Optional.of(ofPart.get(0));
    }
    List<LimitRow> ofThatDay = ofDay.all(id);
    return (ofThatDay.isEmpty() ? table.rows(id) : ofThatDay).stream().findFirst();
  }

  private static LimitInForce asMakers(LimitRow row, OfMaker makers) {
    return new LimitInForce(
        row.limit().id(),
        row.limit().comparison(),
        makers.limit().value(),
        makers.written(),
        makers.source());
  }
}
