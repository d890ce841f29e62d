package org.brakerules.random;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.BrakeJobBuilder;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;

/**
 * Random jobs. Most wheel ends hold a handful of kinds, so that every kind and its neighbours come
 * up often and ten thousand jobs are quickly decided; one job in twenty holds all.
 */
public final class RandomJobs {

  private static final Tables TABLES = Tables.load();
  private static final List<Limit> LIMITS = TABLES.limits().rows().map(LimitRow::limit).toList();
  private static final List<RuleSet> RULE_SETS =
      TABLES.ruleSets().ids().stream().map(RuleSet::new).toList();
  private static final LocalDate USUAL = LocalDate.of(2026, 11, 20);

  private final Dice dice;
  private final LocalDate date;
  private final RuleSet ruleSet;

  private RandomJobs(long seed) {
    dice = new Dice(seed);
    date = around(turnsOfLimits());
    ruleSet = dice.any(RULE_SETS);
  }

  /** The job of a seed. */
  public static BrakeJob of(long seed) {
    return new RandomJobs(seed).job();
  }

  /** Whether a sign is good news when it is seen. */
  public static boolean isGoodSign(PartKind kind, String property) {
    return RandomParts.isGoodSign(kind, property);
  }

  private BrakeJob job() {
    BrakeJobBuilder job =
        BrakeJob.builder()
            .date(date)
            .ruleSet(ruleSet.id())
            .scope(dice.percent(60) ? Scope.CAMSHAFT_OUT : dice.any(Scope.class))
            .acceptance(
                dice.percent(60) ? Acceptance.GUARDED_IF_STATED : dice.any(Acceptance.class));
    List<Place> places = new ArrayList<>();
    List<Aim> aims = new ArrayList<>();
    for (String unit : dice.percent(15) ? List.of("tractor", "trailer-1") : List.of("")) {
      Optional<LocalDate> builtOn =
          dice.percent(70) ? Optional.of(around(turnsOfBuilding())) : Optional.empty();
      builtOn.filter(day -> !day.isAfter(date)).ifPresent(day -> job.builtOn(unit, day));
      for (int axle = dice.percent(95) ? 1 : 2; axle > 0; axle--) {
        Aim aim = Aim.any(dice);
        aims.add(aim);
        AxleKind kind =
            (AxleKind)
                aim.ofBrake("axleKind", AxleKind.class, dice)
                    .orElseGet(() -> dice.any(AxleKind.class));
        job.axle(unit, axle, kind);
        for (WheelEnd end : axle(unit, axle, builtOn, kind, aim)) {
          end.parts().forEach(part -> places.add(part.place()));
          job.wheelEnd(end);
        }
      }
    }
    if (!places.isEmpty() && dice.percent(40)) {
      makersLimits(places, aims).forEach(job::makersLimit);
    }
    return job.build();
  }

  /** One end or both; the brakes of an axle are mostly alike. */
  private List<WheelEnd> axle(
      String unit, int axle, Optional<LocalDate> builtOn, AxleKind kind, Aim aim) {
    Mood mood = dice.percent(50) ? Mood.SOUND : dice.any(Mood.class);
    Set<PartKind> kinds = Neighbours.handful(dice);
    kinds.addAll(aim.kinds());
    RandomLayouts layouts = new RandomLayouts(dice, mood, aim);
    Layout layout = layouts.layout();
    List<WheelEnd> ends = new ArrayList<>();
    for (Side side : dice.percent(40) ? List.of(Side.values()) : List.of(dice.any(Side.class))) {
      WheelEndPath path = new WheelEndPath(unit, axle, side);
      Layout built = dice.percent(75) ? layout : layouts.layout();
      Surroundings around = new Surroundings(date, ruleSet, builtOn, kind, built);
      List<Part> parts = new RandomParts(dice, mood, around, aim).parts(path, kinds);
      ends.add(new WheelEnd(path, built, parts));
    }
    return ends;
  }

  /** The day before a turn, the turn itself, or the day after. */
  private LocalDate around(List<LocalDate> turns) {
    return dice.any(turns).plusDays(dice.below(3) - 1L);
  }

  private static List<LocalDate> turnsOfLimits() {
    List<LocalDate> turns = new ArrayList<>(List.of(USUAL));
    for (Limit limit : LIMITS) {
      limit.from().ifPresent(turns::add);
      limit.to().ifPresent(turns::add);
    }
    return turns;
  }

  private static List<LocalDate> turnsOfBuilding() {
    List<LocalDate> turns = new ArrayList<>(List.of(USUAL));
    for (RuleSet one : RULE_SETS) {
      TABLES.ruleSets().automaticAdjustersFrom(one).ifPresent(turns::add);
    }
    return turns;
  }

  /** Never two of one limit on one path: such a job is refused. */
  private List<MakersLimit> makersLimits(List<Place> places, List<Aim> aims) {
    Map<String, MakersLimit> limits = new LinkedHashMap<>();
    List<Limit> ofThese =
        LIMITS.stream()
            .filter(limit -> places.stream().anyMatch(place -> place.kind() == limit.part()))
            .toList();
    List<Limit> aimedAt =
        ofThese.stream()
            .filter(limit -> aims.stream().anyMatch(aim -> aim.isBeyond(limit.id())))
            .toList();
    for (int i = dice.below(4); i >= 0 && !ofThese.isEmpty(); i--) {
      List<Limit> from = dice.percent(50) && !aimedAt.isEmpty() ? aimedAt : ofThese;
      MakersLimit limit = makersLimit(dice.any(from), places);
      limits.putIfAbsent(limit.limit() + " " + limit.on(), limit);
    }
    return List.copyOf(limits.values());
  }

  /** A limit on one part of its kind, on more, or on all. */
  private MakersLimit makersLimit(Limit limit, List<Place> places) {
    Place place = dice.any(places.stream().filter(one -> one.kind() == limit.part()).toList());
    String on =
        switch (dice.below(4)) {
          case 0 -> "";
          case 1 -> place.wheelEnd().toString();
          case 2 -> place.wheelEnd() + "/" + place.kind().id();
          default -> place.toString();
        };
    return new MakersLimit(
        limit.id(),
        on,
        new RandomReadings(dice, Mood.WILD).makersValue(limit),
        "invented manual",
        "12");
  }
}
