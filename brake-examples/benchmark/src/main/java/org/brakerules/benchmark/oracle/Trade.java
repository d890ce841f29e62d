package org.brakerules.benchmark.oracle;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.brakerules.model.part.PartKind;

/** All the oracle knows of the trade, gathered from the groups of parts. */
final class Trade {

  /** The tables of one group of parts. */
  record Group(List<Point> points, List<Sentence> sentences) {}

  private static final Map<PartKind, List<Limit>> LIMITS = each(Trade::limitsOf);

  private static final List<Group> GROUPS =
      List.of(
          CamshaftParts.GROUP,
          SealParts.GROUP,
          StackParts.GROUP,
          ShoeParts.GROUP,
          AnchorParts.GROUP,
          LiningParts.GROUP,
          DrumParts.GROUP,
          RodParts.GROUP,
          AdjusterParts.GROUP,
          ChamberParts.GROUP,
          HubParts.GROUP,
          LiningCauses.GROUP,
          Causes.GROUP);

  /** Good news when they are seen. */
  private static final Map<PartKind, Long> GOOD =
      Map.of(
          PartKind.CAMSHAFT, Knowable.of(PartKind.CAMSHAFT).set("turnsFreely"),
          PartKind.SLACK_ADJUSTER, Knowable.of(PartKind.SLACK_ADJUSTER).set("hexMoves"),
          PartKind.SPRING_BRAKE, Knowable.of(PartKind.SPRING_BRAKE).set("caged"));

  private static final Map<PartKind, List<Point>> POINTS =
      each(kind -> points().filter(point -> point.part() == kind).toList());

  private static final Map<PartKind, List<Sentence>> SENTENCES =
      each(kind -> sentencesOf(kind, false).toList());

  private static final Map<PartKind, List<Effect>> CONSEQUENCES =
      each(kind -> sentencesOf(kind, true).flatMap(one -> one.effects().stream()).toList());

  private Trade() {}

  private static <T> Map<PartKind, List<T>> each(Function<PartKind, List<T>> of) {
    Map<PartKind, List<T>> each = new EnumMap<>(PartKind.class);
    for (PartKind kind : PartKind.values()) {
      each.put(kind, new ArrayList<>(of.apply(kind)));
    }
    return each;
  }

  private static List<Limit> limitsOf(PartKind kind) {
    return Limit.of(kind, Figures.ALL);
  }

  private static Stream<Point> points() {
    return GROUPS.stream().flatMap(group -> group.points().stream());
  }

  private static Stream<Sentence> sentencesOf(PartKind kind, boolean renewed) {
    return GROUPS.stream()
        .flatMap(group -> group.sentences().stream())
        .filter(sentence -> sentence.subject().kind() == kind)
        .filter(sentence -> sentence.subject().isRenewed() == renewed);
  }

  static List<Point> points(PartKind kind) {
    return POINTS.getOrDefault(kind, List.of());
  }

  static List<Limit> limits(PartKind kind) {
    return LIMITS.getOrDefault(kind, List.of());
  }

  /** The set of these limits of a kind of part, by their numbers. */
  static long limitSet(PartKind kind, List<String> ids) {
    long set = 0;
    for (String id : ids) {
      Limit limit =
          limits(kind).stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
      set |= 1L << limit.number();
    }
    return set;
  }

  /** What follows from what is found on parts of a kind. */
  static List<Sentence> sentences(PartKind kind) {
    return SENTENCES.getOrDefault(kind, List.of());
  }

  /** What follows when some part of a kind that was found does not go back. */
  static List<Effect> consequences(PartKind kind) {
    return CONSEQUENCES.getOrDefault(kind, List.of());
  }

  /** The signs of a kind of part that are good news. */
  static long good(PartKind kind) {
    return GOOD.getOrDefault(kind, 0L);
  }

  @SafeVarargs
  @SuppressWarnings("varargs") // the array is only read
  static <T> List<T> join(List<T>... lists) {
    return Stream.of(lists).flatMap(List::stream).toList();
  }
}
