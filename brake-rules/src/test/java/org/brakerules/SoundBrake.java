package org.brakerules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.part.BearingSetting;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.brakerules.random.ChangedJob;
import org.brakerules.random.Records;

/**
 * The sound wheel end that every case starts from, with what a test changes about it. Parts are
 * named below the left end of the axle; those across the axle begin with {@code right/}.
 */
final class SoundBrake {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final String ACROSS = "right/";

  private final BrakeJob job;

  private SoundBrake(BrakeJob job) {
    this.job = job;
  }

  /** Everything looked at, nothing wrong: tube layout, camshaft out, new seals. */
  static SoundBrake tube() {
    return new SoundBrake(JobReader.read(Tables.open("sound-wheel-end.json").orElseThrow()));
  }

  /** The job as it stands. */
  BrakeJob job() {
    return job;
  }

  SoundBrake layout(CamshaftLayout camshaft) {
    return layout("camshaft", camshaft);
  }

  /** The brake is built in another way. */
  SoundBrake layout(String property, Object value) {
    return new SoundBrake(ChangedJob.layout(job, LEFT, property, value));
  }

  /** The brake across the axle is built in another way. */
  SoundBrake layoutAcross(String property, Object value) {
    return new SoundBrake(ChangedJob.layout(job, LEFT.partner(), property, value));
  }

  /** The other end of the axle is in the job as well, as sound as this one. */
  SoundBrake withPartner() {
    return new SoundBrake(ChangedJob.withPartner(job, job.wheelEnds().findFirst().orElseThrow()));
  }

  /** The axle does something else than drive. */
  SoundBrake axleKind(AxleKind kind) {
    return new SoundBrake(ChangedJob.axles(job, kind));
  }

  SoundBrake scope(Scope scope) {
    return new SoundBrake(Records.with(job, "scope", scope));
  }

  SoundBrake ruleSet(String id) {
    return new SoundBrake(Records.with(job, "ruleSet", new RuleSet(id)));
  }

  SoundBrake on(LocalDate date) {
    return new SoundBrake(Records.with(job, "date", date));
  }

  SoundBrake builtOn(Optional<LocalDate> day) {
    return new SoundBrake(ChangedJob.builtOn(job, day));
  }

  /** The shop supplies a limit of the maker. */
  SoundBrake makersLimit(String limit, String value) {
    List<MakersLimit> limits = new ArrayList<>(job.makersLimits());
    limits.removeIf(one -> one.limit().equals(limit));
    limits.add(new MakersLimit(limit, "", Quantities.parse(value), "invented manual", "12"));
    return new SoundBrake(Records.with(job, "makersLimits", limits));
  }

  /** The shop supplies no limit of the maker. */
  SoundBrake withoutMakersLimits() {
    return new SoundBrake(Records.with(job, "makersLimits", List.of()));
  }

  /** A part has another sign or state. */
  SoundBrake with(String part, String property, Enum<?> value) {
    return changed(part, property, value);
  }

  /** A part is a new one. */
  SoundBrake fittedNew(String part) {
    return changed(part, "tag", Tag.fittedNew(part(part).place()));
  }

  /** A part is the one that was found. */
  SoundBrake asFound(String part) {
    return changed(part, "tag", Tag.asFound(part(part).place()));
  }

  /** A wheel seal is in the job as well, as sound as the rest. */
  SoundBrake withWheelSeal() {
    Part blank = PartKind.WHEEL_SEAL.blank(Tag.asFound(LEFT.place(PartKind.WHEEL_SEAL)));
    Part sound =
        Records.mapped(blank, (component, old) -> old instanceof Sign ? Sign.NOT_SEEN : old);
    return new SoundBrake(ChangedJob.withPart(job, LEFT, sound));
  }

  /** A hub is in the job as well, as sound as the rest, with bearings set in the shop. */
  SoundBrake withHub() {
    Part blank = PartKind.HUB.blank(Tag.asFound(LEFT.place(PartKind.HUB)));
    Part sound =
        Records.mapped(blank, (component, old) -> old instanceof Sign ? Sign.NOT_SEEN : old);
    return new SoundBrake(
        ChangedJob.withPart(job, LEFT, Records.with(sound, "bearings", BearingSetting.HAND_SET)));
  }

  /** A part was measured. */
  SoundBrake measured(String part, String property, String value, Station station, Method method) {
    return measured(part, property, reading(value, station, method));
  }

  /** A part was measured, as found. */
  SoundBrake measured(String part, String property, Reading<?> reading) {
    return changed(part, property, Measurement.of(reading));
  }

  /** Nobody measured a part. */
  SoundBrake notMeasured(String part, String property) {
    return changed(part, property, Measurement.notTaken());
  }

  /** The stroke of the chamber at a full application from a reservoir pressure. */
  SoundBrake stroke(String value, String reservoirPressure) {
    Reading<?> stroke = reading(value, Station.WHOLE_PART, Method.FULL_APPLICATION);
    return measured(
        "chamber", "appliedStroke", stroke.atReservoirPressure(Pressure.parse(reservoirPressure)));
  }

  JobDecision decide() {
    return BrakeRules.standard().decide(job);
  }

  Decision decision(String part) {
    return decide().decision(part(part).place()).orElseThrow();
  }

  Disposition disposition(String part) {
    return decision(part).disposition();
  }

  private SoundBrake changed(String part, String property, Object value) {
    return new SoundBrake(ChangedJob.with(job, part(part).place(), property, value));
  }

  private Part part(String path) {
    String full =
        path.startsWith(ACROSS)
            ? LEFT.partner() + "/" + path.substring(ACROSS.length())
            : LEFT + "/" + path;
    return job.parts()
        .filter(one -> one.place().toString().equals(full))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("No " + path + " in the sound wheel end"));
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the kind of quantity is known when this runs only
  private static Reading<?> reading(String value, Station station, Method method) {
    return Reading.of((Quantity) Quantities.parse(value), station, method).taken(Moment.AS_FOUND);
  }
}
