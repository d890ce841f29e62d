package org.brakerules.random;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Place;
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
            job,
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

  /** Every brake is built in another way. */
  public static BrakeJob layout(BrakeJob job, Layout layout) {
    return wheelEnds(job, end -> new WheelEnd(end.path(), layout, end.parts()));
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
              reading.reservoirPressure()));
    }
    return new Measurement(readings);
  }

  private static Quantity<?> inMillimetres(Quantity<?> quantity) {
    return quantity instanceof Length length
        ? new Length(length.nanometres(), LengthUnit.MILLIMETRE)
        : quantity;
  }
}
