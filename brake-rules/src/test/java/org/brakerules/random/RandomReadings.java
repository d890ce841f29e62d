package org.brakerules.random;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.table.TestPressure;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.AtMost;
import org.brakerules.model.part.Place;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.quantity.TorqueUnit;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** Random readings, most of them close to a limit: at its value, or one step to either side. */
final class RandomReadings {

  private static final Tables TABLES = Tables.load();

  private static final Map<Class<?>, List<? extends Quantity<?>>> STEPS =
      Map.of(
          Length.class, steps("0.001 in", "0.01 mm", "0.00001 in", "0.000001 mm"),
          Angle.class, steps("1 deg", "0.5 deg", "0.000001 deg"),
          Force.class, steps("1 lbf", "0.000001 N"),
          Torque.class, steps("1 lbf.in", "0.000001 N.m"),
          Pressure.class, steps("1 psi", "0.000001 kPa"),
          Share.class, steps("1 %", "0.000001 %"));

  private final Dice dice;
  private final Mood mood;

  RandomReadings(Dice dice, Mood mood) {
    this.dice = dice;
    this.mood = mood;
  }

  Measurement<?> measurement(
      Subject blank, RecordComponent component, Surroundings around, Aim aim) {
    List<LimitRow> against = against(blank, component.getName(), around);
    return measurement(
        blank, component, Records.argument(component), against, around.ruleSet(), aim);
  }

  /** The rows the reading will meet; those of other parts where it meets none. */
  private static List<LimitRow> against(Subject blank, String property, Surroundings around) {
    List<LimitRow> rows =
        TABLES.limits().idsFor(blank.part().partKind()).stream()
            .flatMap(id -> TABLES.limits().rows(id).stream())
            .filter(row -> row.limit().property().equals(property))
            .toList();
    List<LimitRow> fitting =
        rows.stream()
            .filter(row -> row.limit().holds(around.date(), around.ruleSet()))
            .filter(row -> row.selector().fit(blank) != Fit.NO)
            .toList();
    return fitting.isEmpty() ? rows : fitting;
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the kind of quantity is known when this runs only
  private Measurement<?> measurement(
      Subject blank,
      RecordComponent component,
      Class<?> kind,
      List<LimitRow> against,
      RuleSet ruleSet,
      Aim aim) {
    List<LimitInForce> values =
        against.stream().flatMap(row -> row.inForce(blank.layout()).stream()).toList();
    List<Limit> limits = against.stream().map(LimitRow::limit).toList();
    List<Reading<?>> readings = new ArrayList<>();
    int count = dice.percent(mood.right) ? 1 : dice.below(4);
    for (int i = 0; i < count; i++) {
      Quantity value =
          values.isEmpty()
              ? small((Class) kind, component)
              : near((Class) kind, dice.any(values), aim);
      Reading reading =
          new Reading(
              value,
              value.toString(),
              station(blank.part().place(), limits),
              method(limits),
              dice.percent(mood.right) ? Optional.empty() : Optional.of(anyStep((Class) kind)),
              pressure(ruleSet),
              moment(limits));
      readings.add(reading);
    }
    return new Measurement(readings);
  }

  private Station station(Place place, List<Limit> against) {
    Station right =
        against.stream().flatMap(one -> one.station().stream()).findFirst().orElse(place.station());
    return dice.percent(mood.right) ? right : dice.any(Station.class);
  }

  private Method method(List<Limit> against) {
    List<Method> right = against.stream().flatMap(one -> one.methods().stream()).toList();
    return dice.percent(mood.right) && !right.isEmpty() ? dice.any(right) : dice.any(Method.class);
  }

  private Moment moment(List<Limit> against) {
    List<Moment> right = against.stream().flatMap(one -> one.moment().stream()).toList();
    return dice.percent(mood.right) && !right.isEmpty() ? dice.any(right) : dice.any(Moment.class);
  }

  /** At an end of the band of the rule set, now and then one step outside or not stated. */
  private Optional<Pressure> pressure(RuleSet ruleSet) {
    Optional<TestPressure> band = TABLES.ruleSets().testPressure(ruleSet);
    if (band.isEmpty() || !dice.percent(mood.right)) {
      return dice.percent(50)
          ? Optional.empty()
          : Optional.of(
              Quantities.parse(
                  Pressure.class, dice.any(List.of("79 psi", "101 psi", "551 kPa", "6.4 bar"))));
    }
    Pressure least = band.get().least();
    Pressure most = band.get().most();
    Pressure step = step(Pressure.class, 0);
    return Optional.of(
        dice.percent(mood.right)
            ? dice.any(List.of(least, most, least.plus(step), most.minus(step)))
            : dice.any(List.of(least.minus(step), most.plus(step))));
  }

  /** A value a maker might state: beside the one of the table where that has one. */
  @SuppressWarnings({"unchecked", "rawtypes"}) // the kind of quantity is known when this runs only
  Quantity<?> makersValue(Limit limit) {
    RecordComponent limited =
        Records.components(limit.part().recordType()).stream()
            .filter(one -> one.getName().equals(limit.property()))
            .findFirst()
            .orElseThrow();
    Class kind = Records.argument(limited);
    return limit
        .value()
        .map(value -> beside(kind, (Quantity) value))
        .orElseGet(() -> small(kind, limited));
  }

  /** A value beside a limit, in one unit or the other. */
  private <Q extends Quantity<Q>> Q near(Class<Q> kind, LimitInForce limit, Aim aim) {
    Q value = kind.cast(limit.value());
    if (aim.isBeyond(limit.id()) && dice.percent(90)) {
      return inEitherUnit(kind, beyond(kind, limit, value));
    }
    return mood == Mood.SOUND && dice.percent(80)
        ? inEitherUnit(kind, passing(kind, limit, value))
        : beside(kind, value);
  }

  private <Q extends Quantity<Q>> Q beside(Class<Q> kind, Q value) {
    Q step = anyStep(kind);
    Q moved =
        switch (dice.below(4)) {
          case 0 -> value.plus(step);
          case 1 -> value.minus(step);
          case 2 -> value.plus(step).plus(step);
          default -> value;
        };
    return inEitherUnit(kind, moved.isNegative() || isRounded(moved) ? value : moved);
  }

  /** A step of another unit can leave a value that its own unit writes only in round figures. */
  private static boolean isRounded(Quantity<?> value) {
    return !(value instanceof Length) && value.toString().startsWith("about");
  }

  private static <Q extends Quantity<Q>> Q beyond(Class<Q> kind, LimitInForce limit, Q value) {
    Q coarse = step(kind, 0);
    Q beyond = limit.comparison().isUpper() ? value.plus(coarse) : value.minus(coarse);
    return beyond.isNegative() ? value.minus(value) : beyond;
  }

  private static <Q extends Quantity<Q>> Q passing(Class<Q> kind, LimitInForce limit, Q value) {
    Q coarse = step(kind, 0);
    return limit.comparison().isUpper() ? value.minus(coarse) : value.plus(coarse);
  }

  private <Q extends Quantity<Q>> Q small(Class<Q> kind, RecordComponent component) {
    AtMost most = component.getAnnotation(AtMost.class);
    Q largest = most == null ? step(kind, 0) : Quantities.parse(kind, most.value());
    return inEitherUnit(kind, dice.percent(10) ? largest : anyStep(kind));
  }

  private <Q extends Quantity<Q>> Q anyStep(Class<Q> kind) {
    return step(kind, dice.below(STEPS.get(kind).size()));
  }

  private static <Q extends Quantity<Q>> Q step(Class<Q> kind, int rank) {
    return kind.cast(STEPS.get(kind).get(rank));
  }

  private static List<? extends Quantity<?>> steps(String... written) {
    return Arrays.stream(written).map(Quantities::parse).toList();
  }

  private <Q extends Quantity<Q>> Q inEitherUnit(Class<Q> kind, Q value) {
    if (value instanceof Torque torque) {
      return kind.cast(inAnyUnit(torque));
    }
    return value instanceof Length length ? kind.cast(inEitherUnit(length)) : value;
  }

  private Torque inAnyUnit(Torque torque) {
    Torque shown = new Torque(torque.newtonMetres(), dice.any(TorqueUnit.class));
    return isRounded(shown) ? torque : shown;
  }

  /** Not every millimetre has a short text in inches; what has none stays in millimetres. */
  private Length inEitherUnit(Length length) {
    LengthUnit unit = dice.any(LengthUnit.class);
    Length shown = new Length(length.nanometres(), unit);
    return Optional.of(shown)
        .filter(one -> !one.toString().startsWith("about"))
        .orElse(new Length(length.nanometres(), LengthUnit.MILLIMETRE));
  }
}
