package org.brakerules.random;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Reading;

/** The same job with something changed. */
public final class ChangedJob {

  private ChangedJob() {}

  /** One property of one part has another value. */
  public static BrakeJob with(BrakeJob job, Place place, String property, Object value) {
    return parts(
        job, part -> part.place().equals(place) ? Records.with(part, property, value) : part);
  }

  /** One wheel end has one part more. */
  public static BrakeJob withPart(BrakeJob job, WheelEndPath at, Part part) {
    return wheelEnds(
        job,
        end ->
            end.path().equals(at)
                ? Records.with(
                    end, "parts", Stream.concat(end.parts().stream(), Stream.of(part)).toList())
                : end);
  }

  /** Parts, wheel ends, axles and units are listed in another order. */
  public static BrakeJob shuffled(BrakeJob job, Random random) {
    return Records.with(
        job,
        "units",
        shuffled(job.units(), random).stream()
            .map(unit -> Records.with(unit, "axles", shuffledAxles(unit, random)))
            .toList());
  }

  /** Every length is in millimetres. */
  public static BrakeJob inMillimetres(BrakeJob job) {
    BrakeJob read =
        parts(
            layouts(job, ChangedJob::inMillimetres),
            part ->
                Records.mapped(
                    part,
                    (component, old) ->
                        old instanceof Measurement<?> measurement
                            ? inMillimetres(measurement)
                            : old));
    List<MakersLimit> limits =
        job.makersLimits().stream()
            .map(limit -> Records.with(limit, "value", inMillimetres(limit.value())))
            .toList();
    return Records.with(read, "makersLimits", limits);
  }

  /** Every part is put through a function. */
  public static BrakeJob parts(BrakeJob job, UnaryOperator<Part> change) {
    return wheelEnds(
        job,
        end -> new WheelEnd(end.path(), end.layout(), end.parts().stream().map(change).toList()));
  }

  /** The layout of every brake is put through a function. */
  public static BrakeJob layouts(BrakeJob job, UnaryOperator<Layout> change) {
    return wheelEnds(job, end -> new WheelEnd(end.path(), change.apply(end.layout()), end.parts()));
  }

  /** The brake of one wheel end is built in another way. */
  public static BrakeJob layout(BrakeJob job, WheelEndPath at, String property, Object value) {
    return wheelEnds(
        job,
        end ->
            end.path().equals(at)
                ? new WheelEnd(at, Records.with(end.layout(), property, value), end.parts())
                : end);
  }

  /** Every unit was built on another day, or on one not stated. */
  public static BrakeJob builtOn(BrakeJob job, Optional<LocalDate> day) {
    return Records.with(
        job,
        "units",
        job.units().stream().map(unit -> Records.with(unit, "builtOn", day)).toList());
  }

  /** Every axle does something else. */
  public static BrakeJob axles(BrakeJob job, AxleKind kind) {
    return Records.with(
        job,
        "units",
        job.units().stream()
            .map(
                unit ->
                    Records.with(
                        unit,
                        "axles",
                        unit.axles().stream()
                            .map(axle -> Records.with(axle, "kind", kind))
                            .toList()))
            .toList());
  }

  /** The same parts, built the same way, are across the axle as well. */
  public static BrakeJob withPartner(BrakeJob job, WheelEnd end) {
    WheelEndPath across = end.path().partner();
    List<Part> parts = end.parts().stream().map(part -> movedTo(across, part)).toList();
    List<VehicleUnit> units = new ArrayList<>();
    for (VehicleUnit unit : job.units()) {
      List<Axle> axles = new ArrayList<>();
      for (Axle axle : unit.axles()) {
        List<WheelEnd> ends = new ArrayList<>(axle.wheelEnds());
        if (ends.contains(end)) {
          ends.add(new WheelEnd(across, end.layout(), parts));
        }
        axles.add(new Axle(axle.number(), axle.kind(), ends));
      }
      units.add(new VehicleUnit(unit.name(), unit.builtOn(), axles));
    }
    return Records.with(job, "units", units);
  }

  private static Part movedTo(WheelEndPath end, Part part) {
    Place old = part.place();
    Place place = end.place(old.kind(), old.station()).numbered(old.number());
    return Records.with(part, "tag", Records.with(part.tag(), "place", place));
  }

  private static BrakeJob wheelEnds(BrakeJob job, UnaryOperator<WheelEnd> change) {
    List<VehicleUnit> units = new ArrayList<>();
    for (VehicleUnit unit : job.units()) {
      List<Axle> axles = new ArrayList<>();
      for (Axle axle : unit.axles()) {
        List<WheelEnd> ends = axle.wheelEnds().stream().map(change).toList();
        axles.add(new Axle(axle.number(), axle.kind(), ends));
      }
      units.add(new VehicleUnit(unit.name(), unit.builtOn(), axles));
    }
    return Records.with(job, "units", units);
  }

  private static List<Axle> shuffledAxles(VehicleUnit unit, Random random) {
    return shuffled(unit.axles(), random).stream()
        .map(
            axle ->
                new Axle(
                    axle.number(),
                    axle.kind(),
                    shuffled(axle.wheelEnds(), random).stream()
                        .map(end -> Records.with(end, "parts", shuffled(end.parts(), random)))
                        .toList()))
        .toList();
  }

  private static <T> List<T> shuffled(List<T> list, Random random) {
    List<T> copy = new ArrayList<>(list);
    Collections.shuffle(copy, random);
    return copy;
  }

  private static Layout inMillimetres(Layout layout) {
    ChamberSize chamber =
        Records.with(
            layout.chamber(),
            "ratedStroke",
            layout.chamber().ratedStroke().map(ChangedJob::inMillimetres));
    return Records.with(
        Records.with(layout, "chamber", chamber),
        "drumDiameter",
        layout.drumDiameter().map(ChangedJob::inMillimetres));
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // lengths stay lengths, all else stays as it is
  private static Measurement<?> inMillimetres(Measurement<?> measurement) {
    List<Reading<?>> readings = new ArrayList<>();
    for (Reading<?> reading : measurement.readings()) {
      Quantity<?> value = inMillimetres(reading.value());
      readings.add(
          new Reading(
              value,
              value.toString(),
              reading.station(),
              reading.method(),
              reading.uncertainty().map(ChangedJob::inMillimetres),
              reading.reservoirPressure(),
              reading.moment()));
    }
    return new Measurement(readings);
  }

  private static Quantity<?> inMillimetres(Quantity<?> quantity) {
    return quantity instanceof Length length
        ? new Length(length.nanometres(), LengthUnit.MILLIMETRE)
        : quantity;
  }
}
