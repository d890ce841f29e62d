package org.brakerules;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.brakerules.internal.table.Subject;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Sign;
import org.brakerules.model.reading.Measurement;
import org.brakerules.random.ChangedJob;
import org.brakerules.random.Records;

/** One sign or measurement of one part of a job. */
record Observation(Subject subject, RecordComponent component) {

  Place place() {
    return subject.part().place();
  }

  String property() {
    return component.getName();
  }

  Object value() {
    return Records.valueOf(subject.part(), component);
  }

  /** The job with another value of this. */
  BrakeJob changedTo(Object value, BrakeJob job) {
    return ChangedJob.with(job, place(), property(), value);
  }

  @Override
  public String toString() {
    return place() + " " + property() + " " + value();
  }

  /** Every sign and measurement of every part that is there. */
  static List<Observation> all(BrakeJob job) {
    List<Observation> all = new ArrayList<>();
    for (VehicleUnit unit : job.units()) {
      for (Axle axle : unit.axles()) {
        for (WheelEnd end : axle.wheelEnds()) {
          for (Part part : end.parts()) {
            if (part.presence() == Presence.FITTED) {
              Subject subject = new Subject(unit.builtOn(), axle.kind(), end.layout(), part);
              for (RecordComponent component : Records.components(part.getClass())) {
                Class<?> type = component.getType();
                if (type == Sign.class || type == Measurement.class) {
                  all.add(new Observation(subject, component));
                }
              }
            }
          }
        }
      }
    }
    return all;
  }

  /** Whether anybody looked. */
  boolean isStated() {
    return !value().equals(blank());
  }

  /** The value of what nobody looked at. */
  Object blank() {
    return component().getType() == Sign.class ? Sign.NOT_CHECKED : Measurement.notTaken();
  }
}
