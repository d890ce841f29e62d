package org.brakerules.model.part;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.model.reading.Station;
import org.jspecify.annotations.Nullable;

/**
 * Every kind of part a wheel end can have, from the camshaft outwards, with the scope that lays it
 * open and the scope that disturbs it.
 */
public enum PartKind {
  CAMSHAFT(Camshaft.class, Scope.WHEEL_ON, Scope.CAMSHAFT_OUT, Station.WHOLE_PART),
  CAMSHAFT_BUSHING(
      CamshaftBushing.class,
      Scope.SHOES_OFF,
      Scope.CAMSHAFT_OUT,
      Station.HEAD_END,
      Station.SPLINE_END),
  CAMSHAFT_SEAL(
      CamshaftSeal.class,
      Scope.CAMSHAFT_OUT,
      Scope.CAMSHAFT_OUT,
      Station.HEAD_END,
      Station.SPLINE_END),
  HEAD_WASHER(HeadWasher.class, Scope.CAMSHAFT_OUT, Scope.CAMSHAFT_OUT, Station.WHOLE_PART),
  SPACER(
      Spacer.class, Scope.CAMSHAFT_OUT, Scope.CAMSHAFT_OUT, Station.HEAD_END, Station.SPLINE_END),
  SHIM(Shim.class, Scope.CAMSHAFT_OUT, Scope.CAMSHAFT_OUT, Station.HEAD_END, Station.SPLINE_END),
  SNAP_RING(
      SnapRing.class, Scope.WHEEL_ON, Scope.CAMSHAFT_OUT, Station.HEAD_END, Station.SPLINE_END),
  GREASE_FITTING(
      GreaseFitting.class,
      Scope.WHEEL_ON,
      null,
      Station.HEAD_END,
      Station.SPLINE_END,
      Station.TUBE,
      Station.ADJUSTER),
  CAMSHAFT_BRACKET(CamshaftBracket.class, Scope.WHEEL_ON, null, Station.WHOLE_PART),
  SPIDER(Spider.class, Scope.DRUM_OFF, null, Station.WHOLE_PART),
  CAM_ROLLER(CamRoller.class, Scope.SHOES_OFF, Scope.SHOES_OFF, Station.UPPER, Station.LOWER),
  ROLLER_CLIP(RollerClip.class, Scope.SHOES_OFF, Scope.SHOES_OFF, Station.UPPER, Station.LOWER),
  ANCHOR_PIN(AnchorPin.class, Scope.SHOES_OFF, Scope.SHOES_OFF, Station.UPPER, Station.LOWER),
  ANCHOR_BUSHING(
      AnchorBushing.class, Scope.SHOES_OFF, Scope.SHOES_OFF, Station.UPPER, Station.LOWER),
  ANCHOR_PIN_RETAINER(
      AnchorPinRetainer.class, Scope.SHOES_OFF, Scope.SHOES_OFF, Station.UPPER, Station.LOWER),
  RETURN_SPRING(ReturnSpring.class, Scope.DRUM_OFF, Scope.SHOES_OFF, Station.WHOLE_PART),
  SHOE_RETAINING_SPRING(
      ShoeRetainingSpring.class, Scope.DRUM_OFF, Scope.SHOES_OFF, Station.WHOLE_PART),
  RETURN_SPRING_PIN(ReturnSpringPin.class, Scope.SHOES_OFF, null, Station.UPPER, Station.LOWER),
  SHOE(Shoe.class, Scope.SHOES_OFF, Scope.SHOES_OFF, Station.UPPER, Station.LOWER),
  LINING(Lining.class, Scope.DRUM_OFF, Scope.SHOES_OFF, Station.UPPER, Station.LOWER),
  DRUM(Drum.class, Scope.DRUM_OFF, Scope.DRUM_OFF, Station.WHOLE_PART),
  DUST_SHIELD(DustShield.class, Scope.DRUM_OFF, null, Station.WHOLE_PART),
  CLEVIS(Clevis.class, Scope.WHEEL_ON, Scope.CAMSHAFT_OUT, Station.WHOLE_PART),
  CLEVIS_PIN(ClevisPin.class, Scope.WHEEL_ON, Scope.CAMSHAFT_OUT, Station.LARGE, Station.SMALL),
  COTTER_PIN(CotterPin.class, Scope.WHEEL_ON, Scope.CAMSHAFT_OUT, Station.LARGE, Station.SMALL),
  JAM_NUT(JamNut.class, Scope.WHEEL_ON, null, Station.WHOLE_PART),
  PUSH_ROD(PushRod.class, Scope.WHEEL_ON, null, Station.WHOLE_PART),
  SLACK_ADJUSTER(SlackAdjuster.class, Scope.WHEEL_ON, Scope.CAMSHAFT_OUT, Station.WHOLE_PART),
  CONTROL_ARM(ControlArm.class, Scope.WHEEL_ON, null, Station.WHOLE_PART),
  CHAMBER(Chamber.class, Scope.WHEEL_ON, null, Station.WHOLE_PART),
  SPRING_BRAKE(SpringBrake.class, Scope.WHEEL_ON, null, Station.WHOLE_PART),
  HOSE(Hose.class, Scope.WHEEL_ON, null, Station.WHOLE_PART),
  HUB(Hub.class, Scope.DRUM_OFF, null, Station.WHOLE_PART),
  WHEEL_SEAL(WheelSeal.class, Scope.DRUM_OFF, null, Station.WHOLE_PART),
  WHEEL_BEARING(WheelBearing.class, Scope.DRUM_OFF, null, Station.INNER, Station.OUTER),
  WHEEL_SPEED_SENSOR(WheelSpeedSensor.class, Scope.DRUM_OFF, null, Station.WHOLE_PART),
  TONE_RING(ToneRing.class, Scope.DRUM_OFF, null, Station.WHOLE_PART);

  private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');
  private final String words = id.replace('-', ' ');
  private final Class<? extends Part> record;
  private final Scope laidOpenFrom;
  private final @Nullable Scope disturbedFrom;

  @SuppressWarnings("ImmutableEnumChecker") // unmodifiable, in enum order
  private final Set<Station> stations;

  PartKind(
      Class<? extends Part> record,
      Scope laidOpenFrom,
      @Nullable Scope disturbedFrom,
      Station... stations) {
    this.record = record;
    this.laidOpenFrom = laidOpenFrom;
    this.disturbedFrom = disturbedFrom;
    this.stations = Collections.unmodifiableSet(EnumSet.copyOf(List.of(stations)));
  }

  /** The name of the kind in paths and JSON, such as {@code camshaft-bushing}. */
  public String id() {
    return id;
  }

  /** The name of the kind in a sentence, such as {@code camshaft bushing}. */
  public String inWords() {
    return words;
  }

  /** The record that describes a part of this kind. */
  public Class<? extends Part> recordType() {
    return record;
  }

  /**
   * A part of this kind of which nothing is stated but the tag.
   *
   * @throws IllegalArgumentException if the tag is tied to another kind of part
   */
  public Part blank(Tag tag) {
    return Blank.of(record, tag);
  }

  /** The first scope at which the part can be looked at. */
  public Scope laidOpenFrom() {
    return laidOpenFrom;
  }

  /** The first scope at which the part is removed or separated from its mate; empty if none. */
  public Optional<Scope> disturbedFrom() {
    return Optional.ofNullable(disturbedFrom);
  }

  /** The stations a part of this kind can have on its wheel end. */
  public Set<Station> stations() {
    return stations;
  }

  /**
   * Whether a brake whose layout has a place for this part cannot work without it, so that it can
   * be missing but never "not fitted".
   */
  public boolean isEssential() {
    return switch (this) {
      case SNAP_RING,
          HEAD_WASHER,
          SPACER,
          SHIM,
          GREASE_FITTING,
          DUST_SHIELD,
          ROLLER_CLIP,
          RETURN_SPRING_PIN,
          SHOE_RETAINING_SPRING,
          JAM_NUT ->
          false;
      default -> true;
    };
  }

  /** Whether parts of this kind are told apart by station. */
  public boolean hasStations() {
    return !stations.contains(Station.WHOLE_PART);
  }

  String stationsInWords() {
    return hasStations()
        ? stations.stream().map(Station::id).collect(Collectors.joining(" or ", "write ", "."))
        : "a wheel end has it once; leave the station out.";
  }

  /** Finds the kind that a record describes; empty for any other type. */
  public static Optional<PartKind> of(Class<?> type) {
    for (PartKind kind : values()) {
      if (kind.recordType() == type) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /**
   * How many parts of the kind one place of a wheel end can have, an old one and the new one for it
   * counted both: 1 for what a wheel end has once, else {@link Place#MOST_OF_A_KIND}.
   */
  public int mostAtOnePlace() {
    return switch (this) {
      case RETURN_SPRING, SHOE_RETAINING_SPRING, DUST_SHIELD, HOSE -> Place.MOST_OF_A_KIND;
      default -> hasStations() ? Place.MOST_OF_A_KIND : 1;
    };
  }

  /** Finds a kind by its id. */
  public static Optional<PartKind> byId(String id) {
    for (PartKind kind : values()) {
      if (kind.id().equals(id)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
