package org.brakerules.internal.figure;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.brakerules.calc.Working;
import org.brakerules.calc.stroke.CamGeometry;
import org.brakerules.calc.stroke.Looseness;
import org.brakerules.calc.stroke.LostMotion;
import org.brakerules.figure.Figure;
import org.brakerules.model.job.Size;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.Clevis;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.SlackAdjuster;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;

/** What each looseness that was measured costs in stroke, before and after what is replaced. */
final class LostMotionFigure {

  private static final String STROKE_LIMIT = "chamber.applied-stroke.max";

  private final Bench bench;
  private final Set<Place> replaced;

  LostMotionFigure(Bench bench, Set<Place> replaced) {
    this.bench = bench;
    this.replaced = replaced;
  }

  /** Empty if the length of the arm or every play is missing. */
  Optional<LostMotion> lostMotion() {
    Optional<Length> armMovement = adjuster().flatMap(one -> Bench.last(one.armMovement()));
    Map<Looseness, Length> plays = plays();
    return bench
        .arm()
        .filter(length -> !plays.isEmpty() || armMovement.isPresent())
        .map(length -> LostMotion.of(geometry(length), plays, armMovement));
  }

  /** The work; where plays are known but not the arm, what is missing. */
  Optional<Figure> figure() {
    Optional<LostMotion> lost = lostMotion();
    if (lost.isPresent()) {
      return Optional.of(new Figure(about(), working(lost.get())));
    }
    return plays().isEmpty() || bench.arm().isPresent()
        ? Optional.empty()
        : Optional.of(new Figure(about(), LostMotion.missing("effective length of the arm")));
  }

  private Working working(LostMotion lost) {
    Working working = assumed(lost.working());
    Set<Looseness> cured = cured(lost);
    if (!cured.isEmpty()) {
      working =
          working.result(
              "left of it once what is decided is replaced, new parts without play",
              lost.without(cured));
    }
    Optional<Length> limit = bench.most(STROKE_LIMIT).filter(stroke -> stroke.nanometres() > 0);
    return limit.isPresent()
        ? working.result("share of the stroke limit " + limit.get(), lost.shareOf(limit.get()))
        : working;
  }

  /** What is not stated and taken to be common. */
  private Working assumed(Working working) {
    Working more =
        bench.positive(Size.SPLINE_PITCH_RADIUS).isPresent()
            ? working
            : working.assumed("pitch radius of the spline", CamGeometry.COMMON);
    return bench.withLift(more, "lift radius of the cam");
  }

  /** What a new part cures, of the plays that were measured. */
  private Set<Looseness> cured(LostMotion lost) {
    Set<Looseness> cured = EnumSet.noneOf(Looseness.class);
    lost.costs().stream()
        .map(cost -> cost.looseness())
        .filter(looseness -> replaced.contains(curedBy(looseness)))
        .forEach(cured::add);
    return cured;
  }

  private Place curedBy(Looseness looseness) {
    return switch (looseness) {
      case PIN_IN_CLEVIS -> bench.wheelEnd().place(PartKind.CLEVIS);
      case PIN_IN_ARM, ADJUSTER_GEAR -> bench.wheelEnd().place(PartKind.SLACK_ADJUSTER);
      case SPLINE -> bench.wheelEnd().place(PartKind.CAMSHAFT);
      case BUSHING_AT_SPLINE_END ->
          bench.wheelEnd().place(PartKind.CAMSHAFT_BUSHING, Station.SPLINE_END);
      case BUSHING_AT_HEAD_END ->
          bench.wheelEnd().place(PartKind.CAMSHAFT_BUSHING, Station.HEAD_END);
    };
  }

  private Map<Looseness, Length> plays() {
    Map<Looseness, Length> plays = new TreeMap<>();
    bench
        .one(Clevis.class)
        .flatMap(clevis -> Bench.last(clevis.pinMovement()))
        .ifPresent(play -> plays.put(Looseness.PIN_IN_CLEVIS, play));
    bench
        .one(Camshaft.class)
        .flatMap(shaft -> Bench.lastAt(shaft.splineBacklash(), Station.SPLINE_PITCH_RADIUS))
        .ifPresent(play -> plays.put(Looseness.SPLINE, play));
    bench.size(Size.PLAY_OF_PIN_IN_ARM).ifPresent(play -> plays.put(Looseness.PIN_IN_ARM, play));
    bench
        .size(Size.PLAY_OF_ADJUSTER_GEAR)
        .ifPresent(play -> plays.put(Looseness.ADJUSTER_GEAR, play));
    radialPlay(Station.SPLINE_END)
        .ifPresent(play -> plays.put(Looseness.BUSHING_AT_SPLINE_END, play));
    radialPlay(Station.HEAD_END).ifPresent(play -> plays.put(Looseness.BUSHING_AT_HEAD_END, play));
    return plays;
  }

  /** What is not stated is taken to be common. */
  private CamGeometry geometry(Length arm) {
    return new CamGeometry(
        arm,
        bench.positive(Size.SPLINE_PITCH_RADIUS).orElse(CamGeometry.COMMON_SPLINE_RADIUS),
        bench.lift());
  }

  private Optional<Length> radialPlay(Station station) {
    return bench
        .at(CamshaftBushing.class, station)
        .flatMap(
            bushing ->
                Bench.last(
                    bushing.radialPlay(),
                    Method.DIAL_INDICATOR_LIFTED_BY_HAND,
                    Method.BORE_LESS_JOURNAL));
  }

  private Optional<SlackAdjuster> adjuster() {
    return bench.one(SlackAdjuster.class);
  }

  private String about() {
    return bench.wheelEnd().toString();
  }
}
