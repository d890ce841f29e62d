package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence.Measured;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Presence;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.brakerules.random.Answer;
import org.brakerules.random.ChangedJob;
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

  /** The least and the highest reservoir pressure for an applied stroke; any, where none is. */
  private static final Map<String, List<String>> TEST_PRESSURE =
      Map.of("us-federal", List.of("80 psi", "90 psi"), "quebec", List.of("90 psi", "100 psi"));

  /** How the ids of the laws of each rule set begin. */
  private static final Map<String, String> LAWS =
      Map.of("us-federal", "US-49-CFR", "quebec", "QUEBEC-C-24", "us-virginia", "VIRGINIA-19VAC");

  /** What a second reader of the tables finds of one part. */
  private record Place(AxleKind axle, Layout layout, Part part) {}

  /** A limit as the second reader takes it, with its amount in the smallest unit of its kind. */
  private record InForce(Limit row, String source, BigDecimal amount) {}

  /** Whether a row is for a part. */
  private enum Fits {
    YES,
    NO,
    NOT_STATED
  }

  @Test
  void at_most_one_row_of_a_limit_fits_a_part() {
    LongAdder fitted = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = Answer.of(seed).job();
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
          BrakeJob job = Answer.of(seed).job();
          JobDecision answer = Answer.of(seed).decision();
          if (job.acceptance() == Acceptance.GUARDED) {
            return; // There the uncertainty of an instrument counts, which the oracle holds.
          }
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
          BrakeJob job = Answer.of(seed).job();
          assertThat(verdicts(rules.decide(ChangedJob.inMillimetres(job))))
              .isEqualTo(verdicts(Answer.of(seed).decision()));
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

  /** The rows that fit a part; of a limit none of whose rows could fit, the one for the rest. */
  private static List<Limit> rowsFor(Place place, BrakeJob job) {
    List<Limit> holding =
        holding(job).stream().filter(row -> row.part() == place.part().partKind()).toList();
    Set<String> takenUp =
        holding.stream()
            .filter(row -> !isForTheRest(row) && fits(row.appliesTo(), place) != Fits.NO)
            .map(Limit::id)
            .collect(Collectors.toSet());
    return holding.stream()
        .filter(
            row ->
                isForTheRest(row)
                    ? !takenUp.contains(row.id())
                    : fits(row.appliesTo(), place) == Fits.YES)
        .toList();
  }

  private static List<Limit> holding(BrakeJob job) {
    return LIMITS.stream()
        .filter(row -> row.ruleSet().isEmpty() || row.ruleSet().get().equals(job.ruleSet()))
        .filter(row -> !row.exceptUnder().contains(job.ruleSet()))
        .filter(row -> row.from().isEmpty() || row.from().get().compareTo(job.date()) <= 0)
        .filter(row -> row.to().isEmpty() || row.to().get().compareTo(job.date()) >= 0)
        .toList();
  }

  private static boolean isForTheRest(Limit row) {
    return row.appliesTo().equals("otherwise");
  }

  private static Fits fits(String selector, Place place) {
    Set<Fits> terms =
        Arrays.stream(selector.split(";"))
            .map(String::strip)
            .filter(term -> !term.isEmpty())
            .map(term -> fitsOne(term, place))
            .collect(Collectors.toSet());
    if (terms.contains(Fits.NO)) {
      return Fits.NO;
    }
    return terms.contains(Fits.NOT_STATED) ? Fits.NOT_STATED : Fits.YES;
  }

  private static Fits fitsOne(String term, Place place) {
    String attribute = term.substring(0, term.indexOf('='));
    String wanted = term.substring(term.indexOf('=') + 1);
    String stated = value(attribute, place);
    if (stated.isEmpty() || stated.equals("unknown")) {
      return Fits.NOT_STATED;
    }
    boolean refuses = wanted.startsWith("not ");
    boolean named =
        Arrays.stream(wanted.replaceFirst("^not ", "").split("\\|"))
            .anyMatch(one -> isSame(one, stated));
    return named == refuses ? Fits.NO : Fits.YES;
  }

  /** 76.2 mm is 3 in. */
  private static boolean isSame(String one, String other) {
    return isLength(one) && isLength(other)
        ? amount(one).compareTo(amount(other)) == 0
        : one.equals(other);
  }

  private static boolean isLength(String text) {
    return text.endsWith(" in") || text.endsWith(" mm");
  }

  private static String value(String attribute, Place place) {
    String name = attribute.substring(attribute.lastIndexOf('.') + 1);
    Object value =
        switch (attribute) {
          case "axle.kind" -> place.axle();
          case "part.condition" -> place.part().condition();
          case "part.presence" -> place.part().presence();
          case "part.station" -> place.part().station();
          default -> Records.valueOf(holder(attribute, place), name);
        };
    if (value instanceof Optional<?> stated) {
      return stated.map(Object::toString).orElse("");
    }
    return value instanceof Enum<?>
        ? value.toString().toLowerCase(Locale.ROOT).replace('_', '-')
        : value.toString();
  }

  private static Object holder(String attribute, Place place) {
    if (attribute.startsWith("layout.chamber.")) {
      return place.layout().chamber();
    }
    return attribute.startsWith("layout.") ? place.layout() : place.part();
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
      boolean isLaw = row.source().id().startsWith(LAWS.get(job.ruleSet().id()));
      if (row.id().equals(id) && (makers.isEmpty() || isLaw)) {
        tableAmount(row, place)
            .ifPresent(amount -> inForce.add(new InForce(row, row.source().id(), amount)));
      }
    }
    makers.ifPresent(
        one -> inForce.add(new InForce(readAs(id, place, job), "MAKER", amount(one.value()))));
    return inForce;
  }

  /** A maker's limit is read as the row of the part, or else of the day, or else the first. */
  private static Limit readAs(String id, Place place, BrakeJob job) {
    return Stream.of(rowsFor(place, job), holding(job), LIMITS)
        .flatMap(List::stream)
        .filter(row -> row.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** A row without a value has no amount, nor has a share of a stroke that is not stated. */
  private static Optional<BigDecimal> tableAmount(Limit row, Place place) {
    if (row.written().isEmpty()) {
      return Optional.empty();
    }
    String[] share = row.written().split(" % of layout.chamber.ratedStroke", -1);
    if (share.length == 1) {
      return Optional.of(amount(row.written()));
    }
    BigDecimal part = new BigDecimal(share[0]).movePointLeft(2);
    return place.layout().chamber().ratedStroke().map(rated -> amount(rated).multiply(part));
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
                status(place.part(), limit, job)
                    .ifPresent(
                        status ->
                            judged
                                .computeIfAbsent(status, one -> new TreeSet<>())
                                .add(limit.row().id() + " " + limit.source())));
    return judged;
  }

  private static Optional<CheckStatus> status(Part part, InForce limit, BrakeJob job) {
    Measurement<?> measurement = (Measurement<?>) Records.valueOf(part, limit.row().property());
    return measurement.readings().stream()
        .filter(one -> counts(one, limit.row(), part, job))
        .map(one -> status(one, limit, job))
        .max(Comparator.comparing(ReadingsAgainstLimitsTest::gravity));
  }

  private static boolean counts(Reading<?> reading, Limit row, Part part, BrakeJob job) {
    Station station = row.station().orElse(part.station());
    return (station == Station.WHOLE_PART || reading.station() == station)
        && (row.methods().isEmpty() || row.methods().contains(reading.method()))
        && (row.moment().isEmpty() || row.moment().get() == reading.moment())
        && (reading.method() != Method.FULL_APPLICATION || isAtTestPressure(reading, job));
  }

  private static boolean isAtTestPressure(Reading<?> reading, BrakeJob job) {
    List<String> band = TEST_PRESSURE.get(job.ruleSet().id());
    if (band == null) {
      return true;
    }
    return reading
        .reservoirPressure()
        .map(pressure -> amount(pressure.toString()))
        .filter(pressure -> pressure.compareTo(amount(band.get(0))) >= 0)
        .filter(pressure -> pressure.compareTo(amount(band.get(1))) <= 0)
        .isPresent();
  }

  private static CheckStatus status(Reading<?> reading, InForce limit, BrakeJob job) {
    BigDecimal value = amount(reading.value());
    BigDecimal doubt =
        job.acceptance() == Acceptance.SIMPLE
            ? BigDecimal.ZERO
            : reading.uncertainty().map(one -> amount(one)).orElse(BigDecimal.ZERO);
    boolean low = passes(value.subtract(doubt), limit);
    boolean high = passes(value.add(doubt), limit);
    if (low && high) {
      return CheckStatus.WITHIN;
    }
    return low || high ? CheckStatus.UNPROVEN : CheckStatus.BEYOND;
  }

  private static boolean passes(BigDecimal value, InForce limit) {
    int order = value.compareTo(limit.amount());
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

  /** What its unit cannot write exactly is taken in the unit in which it is kept. */
  private static BigDecimal amount(Quantity<?> quantity) {
    if (!quantity.toString().startsWith("about ")) {
      return amount(quantity.toString());
    }
    return quantity instanceof Torque torque
        ? torque.newtonMetres()
        : amount(new Length(((Length) quantity).nanometres(), LengthUnit.MILLIMETRE).toString());
  }

  /** The amount of a text such as {@code 0.020 in}, {@code 3/16 in} or {@code 1 3/4 in}. */
  private static BigDecimal amount(String written) {
    String[] words = written.split(" ");
    BigDecimal sum = BigDecimal.ZERO;
    for (int i = 0; i < words.length - 1; i++) {
      String[] fraction = words[i].split("/");
      BigDecimal over = fraction.length == 2 ? new BigDecimal(fraction[1]) : BigDecimal.ONE;
      sum = sum.add(new BigDecimal(fraction[0]).divide(over));
    }
    return sum.multiply(IN_BASE.get(words[words.length - 1]));
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
        .map(check -> check.limitId() + " " + check.limit().orElseThrow().source().id())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Map.Entry<String, BigDecimal> unit(String symbol, String factor) {
    return Map.entry(symbol, new BigDecimal(factor));
  }
}
