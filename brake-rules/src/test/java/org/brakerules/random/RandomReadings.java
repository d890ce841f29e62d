package org.brakerules.random;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.limit.Limit;
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
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** Random readings, most of them close to a limit: at its value, or one step to either side. */
final class RandomReadings {

  private static final Map<Class<?>, List<String>> STEPS =
      Map.of(
          Length.class, List.of("0.001 in", "0.01 mm", "0.00001 in", "0.000001 mm"),
          Angle.class, List.of("1 deg", "0.5 deg", "0.000001 deg"),
          Force.class, List.of("1 lbf", "0.000001 N"),
          Torque.class, List.of("1 lbf.in", "0.000001 N.m"),
          Pressure.class, List.of("1 psi", "0.000001 kPa"),
          Share.class, List.of("1 %", "0.000001 %"));

  private final Dice dice;
  private final Mood mood;
  private final List<Limit> limits;

  RandomReadings(Dice dice, Mood mood, List<Limit> limits) {
    this.dice = dice;
    this.mood = mood;
    this.limits = limits;
  }

  Measurement<?> measurement(Place place, RecordComponent component) {
    List<Limit> against =
        limits.stream()
            .filter(one -> one.part() == place.kind())
            .filter(one -> one.property().equals(component.getName()))
            .toList();
    return measurement(place, component, Records.argument(component), against);
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the kind of quantity is known when this runs only
  private Measurement<?> measurement(
      Place place, RecordComponent component, Class<?> kind, List<Limit> against) {
    List<Reading<?>> readings = new ArrayList<>();
    int count = dice.percent(mood.right) ? 1 : dice.below(4);
    for (int i = 0; i < count; i++) {
      Quantity<?> value =
          against.isEmpty() ? small((Class) kind, component) : near((Class) kind, against);
      Reading<?> reading = Reading.of((Quantity) value, station(place, against), method(against));
      readings.add(
          dice.percent(mood.right)
              ? reading
              : ((Reading) reading).plusOrMinus(anyStep((Class) kind)));
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

  /** A value beside one of the limits, in one unit or the other. */
  <Q extends Quantity<Q>> Q near(Class<Q> kind, List<Limit> against) {
    Limit limit = dice.any(against);
    Q value = kind.cast(limit.value());
    if (mood == Mood.SOUND && dice.percent(80)) {
      return inEitherUnit(kind, passing(kind, limit, value));
    }
    Q step = anyStep(kind);
    Q moved =
        switch (dice.below(4)) {
          case 0 -> value.plus(step);
          case 1 -> value.minus(step);
          case 2 -> value.plus(step).plus(step);
          default -> value;
        };
    return inEitherUnit(kind, moved.isNegative() ? value : moved);
  }

  private <Q extends Quantity<Q>> Q passing(Class<Q> kind, Limit limit, Q value) {
    Q coarse = step(kind, 0);
    return limit.comparison().isUpper() ? value.minus(coarse) : value.plus(coarse);
  }

  private <Q extends Quantity<Q>> Q small(Class<Q> kind, RecordComponent component) {
    AtMost most = component.getAnnotation(AtMost.class);
    Q largest = Quantities.parse(kind, most == null ? STEPS.get(kind).get(0) : most.value());
    return inEitherUnit(kind, dice.percent(10) ? largest : anyStep(kind));
  }

  <Q extends Quantity<Q>> Q anyStep(Class<Q> kind) {
    return step(kind, dice.below(STEPS.get(kind).size()));
  }

  private static <Q extends Quantity<Q>> Q step(Class<Q> kind, int rank) {
    return Quantities.parse(kind, STEPS.get(kind).get(rank));
  }

  private <Q extends Quantity<Q>> Q inEitherUnit(Class<Q> kind, Q value) {
    return value instanceof Length length ? kind.cast(inEitherUnit(length)) : value;
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
