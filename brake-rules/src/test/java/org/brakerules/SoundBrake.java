package org.brakerules;

import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Tag;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;
import org.brakerules.random.ChangedJob;
import org.brakerules.random.Records;

/** The sound wheel end that every case starts from, with what a test changes about it. */
final class SoundBrake {

  private static final String END = "axle2/left/";

  private final BrakeJob job;

  private SoundBrake(BrakeJob job) {
    this.job = job;
  }

  /** Everything looked at, nothing wrong: tube layout, camshaft out, new seals. */
  static SoundBrake tube() {
    return new SoundBrake(JobReader.read(Tables.open("sound-wheel-end.json").orElseThrow()));
  }

  SoundBrake layout(CamshaftLayout camshaft) {
    Layout old = job.wheelEnds().findFirst().orElseThrow().layout();
    return new SoundBrake(ChangedJob.layout(job, Records.with(old, "camshaft", camshaft)));
  }

  SoundBrake scope(Scope scope) {
    return new SoundBrake(Records.with(job, "scope", scope));
  }

  SoundBrake ruleSet(String id) {
    return new SoundBrake(Records.with(job, "ruleSet", new RuleSet(id)));
  }

  /** A part has another sign or state. */
  SoundBrake with(String part, String property, Enum<?> value) {
    return new SoundBrake(ChangedJob.with(job, part(part).place(), property, value));
  }

  /** A part is a new one. */
  SoundBrake fittedNew(String part) {
    Part old = part(part);
    return new SoundBrake(ChangedJob.with(job, old.place(), "tag", Tag.fittedNew(old.place())));
  }

  /** A part is the one that was found. */
  SoundBrake asFound(String part) {
    Part old = part(part);
    return new SoundBrake(ChangedJob.with(job, old.place(), "tag", Tag.asFound(old.place())));
  }

  /** A part was measured. */
  SoundBrake measured(String part, String property, String value, Station station, Method method) {
    Measurement<?> measurement = measurement(Quantities.parse(value), station, method);
    return new SoundBrake(ChangedJob.with(job, part(part).place(), property, measurement));
  }

  Decision decision(String part) {
    return BrakeRules.standard().decide(job).decision(part(part).place()).orElseThrow();
  }

  Disposition disposition(String part) {
    return decision(part).disposition();
  }

  private Part part(String path) {
    return job.parts()
        .filter(one -> one.place().toString().equals(END + path))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("No " + path + " in the sound wheel end"));
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the kind of quantity is known when this runs only
  private static Measurement<?> measurement(Quantity<?> value, Station station, Method method) {
    return Measurement.of((Quantity) value, station, method);
  }
}
