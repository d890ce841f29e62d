package org.brakerules.random;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Point.Finds;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.BrakeJobBuilder;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Disturbance;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/**
 * Random jobs over parts of every kind. Components are filled by their type, so a new property or
 * kind of part is covered without a change here.
 */
public final class RandomJobs {

  private static final Tables TABLES = Tables.load();
  private static final List<Limit> LIMITS = TABLES.limits().rows().map(LimitRow::limit).toList();

  /** The kinds that the rule base knows something of; most wheel ends are about these alone. */
  private static final Set<PartKind> WITH_POINTS =
      TABLES.points().points().stream()
          .map(Point::part)
          .collect(Collectors.toCollection(() -> EnumSet.noneOf(PartKind.class)));

  private static final Set<String> GOOD_SIGNS =
      TABLES.points().points().stream()
          .filter(point -> point.finds() == Finds.GOOD)
          .map(RandomJobs::nameOf)
          .collect(Collectors.toSet());

  private final Dice dice;
  private Mood mood = Mood.SOUND;
  private Set<PartKind> kinds = Set.of();

  private RandomJobs(long seed) {
    dice = new Dice(seed);
  }

  /** The job of a seed. */
  public static BrakeJob of(long seed) {
    return new RandomJobs(seed).job();
  }

  /** Whether a sign is good news when it is seen. */
  public static boolean isGoodSign(PartKind kind, String property) {
    return GOOD_SIGNS.contains(kind + "." + property);
  }

  private static String nameOf(Point point) {
    return point.part() + "." + point.property().name();
  }

  private BrakeJob job() {
    BrakeJobBuilder job =
        BrakeJob.builder()
            .date(date())
            .ruleSet(dice.any(List.copyOf(TABLES.ruleSets().ids())))
            .scope(dice.percent(60) ? Scope.CAMSHAFT_OUT : dice.any(Scope.class));
    List<Place> places = new ArrayList<>();
    for (WheelEndPath path : wheelEnds()) {
      mood = dice.percent(50) ? Mood.SOUND : dice.any(Mood.class);
      kinds = dice.percent(75) ? WITH_POINTS : EnumSet.allOf(PartKind.class);
      WheelEnd end = new WheelEnd(path, layout(), parts(path));
      end.parts().forEach(part -> places.add(part.place()));
      job.axle(path.unit(), path.axle(), dice.any(AxleKind.class)).wheelEnd(end);
    }
    if (!places.isEmpty() && dice.percent(40)) {
      makersLimits(places).forEach(job::makersLimit);
    }
    return job.build();
  }

  private LocalDate date() {
    List<LocalDate> turns = new ArrayList<>(List.of(LocalDate.of(2026, 11, 20)));
    for (Limit limit : LIMITS) {
      limit.from().ifPresent(turns::add);
      limit.to().ifPresent(turns::add);
    }
    return dice.any(turns).plusDays(dice.below(3) - 1L);
  }

  private List<WheelEndPath> wheelEnds() {
    boolean combination = dice.percent(20);
    List<WheelEndPath> paths = new ArrayList<>();
    int count = dice.percent(75) ? 1 : 1 + dice.below(4);
    for (int i = 0; i < count; i++) {
      String unit = combination ? (i < 2 ? "tractor" : "trailer-1") : "";
      paths.add(new WheelEndPath(unit, 1 + i / 2, Side.values()[i % 2]));
    }
    return paths;
  }

  private Layout layout() {
    return Records.build(
        Layout.class,
        component ->
            component.getType().isEnum() ? state(component.getType(), mood) : ChamberSize.UNKNOWN);
  }

  private List<Part> parts(WheelEndPath path) {
    List<Part> parts = new ArrayList<>();
    for (PartKind kind : kinds) {
      for (Station station : kind.stations()) {
        if (dice.percent(mood.stated)) {
          Place place = path.place(kind, station);
          parts.add(part(place));
          if (dice.percent(3)) {
            parts.add(part(place.numbered(2 + dice.below(2))));
          }
        }
      }
    }
    return parts;
  }

  private Part part(Place place) {
    Tag tag =
        new Tag(
            place,
            dice.percent(mood.stated) ? Presence.FITTED : dice.any(Presence.class),
            dice.percent(70) ? Condition.AS_FOUND : Condition.NEW,
            dice.percent(80) ? Disturbance.BY_SCOPE : dice.any(Disturbance.class));
    Part part =
        Records.build(place.kind().recordType(), component -> valueOf(component, tag, mood));
    return mood == Mood.SOUND && dice.percent(30) ? withOneOddity(part) : part;
  }

  /** A part with one thing about it that may be wrong, which its other properties do not hide. */
  private Part withOneOddity(Part part) {
    RecordComponent odd = dice.any(Records.components(part.getClass()));
    Object value =
        odd.getType() == Sign.class && dice.percent(80)
            ? Sign.SEEN
            : valueOf(odd, part.tag(), Mood.WILD);
    return Records.with(part, odd.getName(), value);
  }

  private Object valueOf(RecordComponent component, Tag tag, Mood of) {
    Class<?> type = component.getType();
    if (type == Tag.class) {
      return tag;
    }
    if (type == Measurement.class) {
      return new RandomReadings(dice, of, LIMITS).measurement(tag.place(), component);
    }
    return type == Sign.class
        ? sign(isGoodSign(tag.place().kind(), component.getName()), of)
        : state(type, of);
  }

  private Sign sign(boolean goodNews, Mood of) {
    if (dice.percent(of.good)) {
      return goodNews ? Sign.SEEN : Sign.NOT_SEEN;
    }
    return dice.any(Sign.class);
  }

  /** The first state of a list is taken for the usual one, so that parts of a brake agree. */
  private Object state(Class<?> type, Mood of) {
    return dice.percent(of.stated) && dice.percent(70)
        ? type.getEnumConstants()[0]
        : dice.any(type);
  }

  /** Never two of one limit on one path: such a job is refused. */
  private List<MakersLimit> makersLimits(List<Place> places) {
    Map<String, MakersLimit> limits = new LinkedHashMap<>();
    for (int i = dice.below(4); i >= 0; i--) {
      MakersLimit limit = makersLimit(dice.any(LIMITS), places);
      limits.putIfAbsent(limit.limit() + " " + limit.on(), limit);
    }
    return List.copyOf(limits.values());
  }

  /** A limit on one part of its kind, on more, or on all. */
  private MakersLimit makersLimit(Limit limit, List<Place> places) {
    Place any = dice.any(places);
    List<Place> ofKind = places.stream().filter(one -> one.kind() == limit.part()).toList();
    Place place = ofKind.isEmpty() ? any : dice.any(ofKind);
    String on =
        switch (dice.below(ofKind.isEmpty() ? 2 : 4)) {
          case 0 -> "";
          case 1 -> place.wheelEnd().toString();
          case 2 -> place.wheelEnd() + "/" + place.kind().id();
          default -> place.toString();
        };
    return new MakersLimit(limit.id(), on, makersValue(limit), "invented manual", "12");
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the kind of quantity is known when this runs only
  private Quantity<?> makersValue(Limit limit) {
    RandomReadings readings = new RandomReadings(dice, Mood.WILD, LIMITS);
    return readings.near((Class) limit.value().getClass(), List.of(limit));
  }
}
