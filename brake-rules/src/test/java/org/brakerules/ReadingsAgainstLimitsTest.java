package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Collectors;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence.Measured;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Presence;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.brakerules.random.ChangedJob;
import org.brakerules.random.RandomJobs;
import org.brakerules.random.Records;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/**
 * Every reading is judged a second time, by decimal arithmetic on the texts of reading and limit
 * alone, and by selectors read afresh from the text of the table.
 */
class ReadingsAgainstLimitsTest {

  private static final int JOBS = 10_000;
  private static final List<Limit> LIMITS =
      Tables.load().limits().rows().map(LimitRow::limit).toList();

  /** How many of the smallest unit of its kind a unit is. */
  private static final Map<String, BigDecimal> IN_BASE =
      Map.ofEntries(
          unit("in", "25.4"),
          unit("mm", "1"),
          unit("deg", "1"),
          unit("turn", "360"),
          unit("%", "1"),
          unit("lbf", "4.4482216152605"),
          unit("N", "1"),
          unit("kN", "1000"),
          unit("lbf.in", "0.1129848290276167"),
          unit("lbf.ft", "1.3558179483314004"),
          unit("N.m", "1"),
          unit("psi", "4.4482216152605"),
          unit("kPa", "0.64516"),
          unit("bar", "64.516"));

  private final BrakeRules rules = BrakeRules.standard();

  /** What a second reader of the tables finds of one part. */
  private record Place(AxleKind axle, Layout layout, Part part) {}

  /** A limit as the second reader takes it. */
  private record InForce(Limit row, String written) {}

  @Test
  void at_most_one_row_of_a_limit_fits_a_part() {
    LongAdder fitted = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = RandomJobs.of(seed);
          for (Place place : places(job)) {
            Map<String, Integer> rows = new HashMap<>();
            rowsFor(place, job).forEach(row -> rows.merge(row.id(), 1, Integer::sum));
            assertThat(rows.values())
                .as("%s of %s", rows, place.part().place())
                .allMatch(one -> one == 1);
            fitted.add(rows.size());
          }
        });
    assertThat(fitted.sum()).isGreaterThan(JOBS);
  }

  @Test
  void readings_pass_and_fail_as_decimal_arithmetic_says() {
    LongAdder within = new LongAdder();
    LongAdder beyond = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = RandomJobs.of(seed);
          JobDecision answer = rules.decide(job);
          for (Place place : places(job)) {
            if (place.part().presence() == Presence.NOT_FITTED) {
              continue;
            }
            Decision decision = answer.decision(place.part().place()).orElseThrow();
            Map<CheckStatus, Set<String>> mine = judged(place, job);
            assertThat(named(decision.passed()))
                .as("passed on %s", place.part())
                .isEqualTo(mine.getOrDefault(CheckStatus.WITHIN, Set.of()));
            Set<String> failed = mine.getOrDefault(CheckStatus.BEYOND, Set.of());
            assertThat(failed)
                .as("failed on %s", place.part())
                .containsAll(named(measured(decision)));
            if (!failed.isEmpty()) {
              assertThat(decision.disposition())
                  .as("%s with %s", place.part(), failed)
                  .isNotIn(Disposition.REUSE, Disposition.CLEAN);
            }
            if (decision.disposition() != Disposition.REPLACE) {
              assertThat(named(measured(decision))).containsAll(failed);
            }
            within.add(decision.passed().size());
            beyond.add(failed.size());
          }
        });
    assertThat(within.sum()).isGreaterThan(JOBS);
    assertThat(beyond.sum()).isGreaterThan(JOBS / 5);
  }

  @Test
  void a_job_in_millimetres_gets_the_verdicts_of_the_job_in_inches() {
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = RandomJobs.of(seed);
          assertThat(verdicts(rules.decide(ChangedJob.inMillimetres(job))))
              .isEqualTo(verdicts(rules.decide(job)));
        });
  }

  private static List<String> verdicts(JobDecision answer) {
    return answer.decisions().stream()
        .map(
            one ->
                one.part()
                    + " "
                    + one.disposition()
                    + one.hold()
                    + one.road()
                    + new TreeSet<>(one.reasons().stream().map(reason -> reason.rule()).toList())
                    + one.needed().stream().map(need -> need.point()).toList())
        .toList();
  }

  private static List<Place> places(BrakeJob job) {
    List<Place> places = new ArrayList<>();
    for (VehicleUnit unit : job.units()) {
      for (Axle axle : unit.axles()) {
        for (WheelEnd end : axle.wheelEnds()) {
          end.parts().forEach(part -> places.add(new Place(axle.kind(), end.layout(), part)));
        }
      }
    }
    return places;
  }

  private static List<Limit> rowsFor(Place place, BrakeJob job) {
    return LIMITS.stream()
        .filter(row -> row.part() == place.part().partKind())
        .filter(row -> row.ruleSet().isEmpty() || row.ruleSet().get().equals(job.ruleSet()))
        .filter(row -> row.from().isEmpty() || row.from().get().compareTo(job.date()) <= 0)
        .filter(row -> row.to().isEmpty() || row.to().get().compareTo(job.date()) >= 0)
        .filter(row -> appliesTo(row.appliesTo(), place))
        .toList();
  }

  private static boolean appliesTo(String selector, Place place) {
    return Arrays.stream(selector.split(";"))
        .map(String::strip)
        .filter(term -> !term.isEmpty())
        .allMatch(
            term -> {
              String[] sides = term.split("=");
              String value = value(sides[0].strip(), place);
              return Arrays.asList(sides[1].strip().split("\\|")).contains(value);
            });
  }

  private static String value(String attribute, Place place) {
    String name = attribute.substring(attribute.indexOf('.') + 1);
    Object value =
        switch (attribute) {
          case "axle.kind" -> place.axle();
          case "part.condition" -> place.part().condition();
          case "part.presence" -> place.part().presence();
          case "part.station" -> place.part().station();
          default ->
              Records.valueOf(
                  attribute.startsWith("layout.") ? place.layout() : place.part(), name);
        };
    return value.toString().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static List<InForce> inForce(String id, Place place, BrakeJob job) {
    Optional<MakersLimit> makers = Optional.empty();
    for (MakersLimit one : job.makersLimits()) {
      String path = place.part().place() + "/";
      boolean covers = one.on().isEmpty() || path.startsWith(one.on() + "/");
      boolean narrower = makers.isEmpty() || one.on().length() >= makers.get().on().length();
      if (one.limit().equals(id) && covers && narrower) {
        makers = Optional.of(one);
      }
    }
    List<InForce> inForce = new ArrayList<>();
    for (Limit row : rowsFor(place, job)) {
      boolean stays = makers.isEmpty() || row.source().standing() == Standing.LAW;
      if (row.id().equals(id) && stays) {
        inForce.add(new InForce(row, row.written()));
      }
    }
    Limit first = LIMITS.stream().filter(row -> row.id().equals(id)).findFirst().orElseThrow();
    makers.ifPresent(one -> inForce.add(new InForce(first, one.value().toString())));
    return inForce;
  }

  private static Map<CheckStatus, Set<String>> judged(Place place, BrakeJob job) {
    Map<CheckStatus, Set<String>> judged = new HashMap<>();
    LIMITS.stream()
        .filter(row -> row.part() == place.part().partKind())
        .map(Limit::id)
        .distinct()
        .flatMap(id -> inForce(id, place, job).stream())
        .forEach(
            limit ->
                status(place.part(), limit)
                    .ifPresent(
                        status ->
                            judged
                                .computeIfAbsent(status, one -> new TreeSet<>())
                                .add(limit.row().id() + " " + limit.written())));
    return judged;
  }

  private static Optional<CheckStatus> status(Part part, InForce limit) {
    Measurement<?> measurement = (Measurement<?>) Records.valueOf(part, limit.row().property());
    Station station = limit.row().station().orElse(part.station());
    return measurement.readings().stream()
        .filter(one -> station == Station.WHOLE_PART || one.station() == station)
        .filter(
            one -> limit.row().methods().isEmpty() || limit.row().methods().contains(one.method()))
        .map(one -> status(one, limit))
        .max(java.util.Comparator.comparing(ReadingsAgainstLimitsTest::gravity));
  }

  private static CheckStatus status(Reading<?> reading, InForce limit) {
    BigDecimal value = amount(reading.written());
    BigDecimal doubt =
        reading.uncertainty().map(one -> amount(one.toString())).orElse(BigDecimal.ZERO);
    boolean low = passes(value.subtract(doubt), limit);
    boolean high = passes(value.add(doubt), limit);
    if (low && high) {
      return CheckStatus.WITHIN;
    }
    return low || high ? CheckStatus.UNPROVEN : CheckStatus.BEYOND;
  }

  private static boolean passes(BigDecimal value, InForce limit) {
    int order = value.compareTo(amount(limit.written()));
    return switch (limit.row().comparison().inWords()) {
      case "at most" -> order <= 0;
      case "less than" -> order < 0;
      case "at least" -> order >= 0;
      default -> order > 0;
    };
  }

  private static int gravity(CheckStatus status) {
    return List.of(CheckStatus.WITHIN, CheckStatus.UNPROVEN, CheckStatus.BEYOND).indexOf(status);
  }

  private static BigDecimal amount(String written) {
    String[] words = written.split(" ");
    return new BigDecimal(words[0]).multiply(IN_BASE.get(words[1]));
  }

  private static List<Check> measured(Decision decision) {
    return decision.reasons().stream()
        .flatMap(reason -> reason.evidence().stream())
        .filter(Measured.class::isInstance)
        .map(one -> ((Measured) one).check())
        .filter(check -> check.part().equals(decision.part()))
        .toList();
  }

  private static Set<String> named(List<Check> checks) {
    return checks.stream()
        .map(check -> check.limitId() + " " + check.limit().orElseThrow().written())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Map.Entry<String, BigDecimal> unit(String symbol, String factor) {
    return Map.entry(symbol, new BigDecimal(factor));
  }
}
