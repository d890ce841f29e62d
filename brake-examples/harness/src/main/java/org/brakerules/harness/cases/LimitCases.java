package org.brakerules.harness.cases;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.limit.Limit;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.quantity.AngleUnit;
import org.brakerules.model.quantity.ForceUnit;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.quantity.PressureUnit;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.ShareUnit;
import org.brakerules.model.quantity.TorqueUnit;
import org.brakerules.model.quantity.Unit;

/** Readings one step below a limit, at it, and one step above it, in every unit of its kind. */
public final class LimitCases {

  private static final List<Unit<?>> UNITS =
      Stream.of(
              LengthUnit.values(),
              ForceUnit.values(),
              TorqueUnit.values(),
              PressureUnit.values(),
              AngleUnit.values(),
              ShareUnit.values())
          .<Unit<?>>flatMap(Stream::of)
          .toList();

  private LimitCases() {}

  /** The jobs of every limit that has a value, and one job of each without its reading. */
  public static Map<Limit, List<BrakeJob>> jobs(List<Limit> limits) {
    return limits.stream()
        .filter(limit -> limit.value().isPresent())
        .collect(Collectors.toMap(Function.identity(), limit -> jobs(limit).toList()));
  }

  private static Stream<BrakeJob> jobs(Limit limit) {
    return Stream.concat(
        of(limit).map(LimitCase::job), of(limit).limit(1).map(LimitCase::jobWithoutReading));
  }

  static Stream<LimitCase> of(Limit limit) {
    Quantity<?> value = limit.value().orElseThrow();
    return UNITS.stream()
        .filter(unit -> unit.getClass() == value.unit().getClass())
        .flatMap(unit -> in(limit, unit));
  }

  @SuppressWarnings("unchecked") // the unit is of the kind of the limit
  private static <Q extends Quantity<Q>> Stream<LimitCase> in(Limit limit, Unit<?> unit) {
    Q value = (Q) limit.value().orElseThrow();
    String written = value.format((Unit<Q>) unit);
    Q centre = (Q) Quantities.parse(written.replace("about ", ""));
    Q step = (Q) Quantities.parse(step(unit));
    Stream<LimitCase> beside =
        Stream.of(
            one(limit, "just below", centre.minus(step)),
            one(limit, "just above", centre.plus(step)));
    // A limit that this unit cannot write exactly has no reading at it.
    return written.startsWith("about ")
        ? beside
        : Stream.concat(beside, Stream.of(one(limit, "at the limit", centre)));
  }

  @SuppressWarnings("unchecked") // the reading is of the kind of the limit
  private static <Q extends Quantity<Q>> LimitCase one(Limit limit, String side, Q reading) {
    return new LimitCase(
        limit, side, reading, limit.comparison().passes(reading, (Q) limit.value().orElseThrow()));
  }

  /** The step in which the instruments of the trade are read. */
  private static String step(Unit<?> unit) {
    String number =
        switch (unit.symbol()) {
          case "in" -> "0.001 ";
          case "mm", "turn" -> "0.01 ";
          case "bar", "kN" -> "0.1 ";
          default -> "1 ";
        };
    return number + unit.symbol();
  }
}
