package org.brakerules.benchmark.oracle;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.model.part.PartKind;

/** All the oracle knows of the trade, gathered from the groups of parts. */
final class Trade {

  /** The tables of one group of parts. */
  record Group(List<Point> points, List<Figure> figures, List<Sentence> sentences) {}

  private static final List<Group> GROUPS =
      List.of(
          CamshaftParts.GROUP,
          StackParts.GROUP,
          ShoeParts.GROUP,
          AnchorParts.GROUP,
          LiningParts.GROUP,
          DrumParts.GROUP,
          RodParts.GROUP,
          AdjusterParts.GROUP,
          ChamberParts.GROUP,
          HubParts.GROUP,
          Causes.GROUP);

  /** Good news when they are seen. */
  private static final Set<String> GOOD = Set.of("turnsFreely", "hexMoves", "caged");

  static final List<Figure> FIGURES =
      GROUPS.stream().flatMap(group -> group.figures().stream()).toList();

  private static final Map<PartKind, List<Point>> POINTS =
      GROUPS.stream()
          .flatMap(group -> group.points().stream())
          .collect(
              Collectors.groupingBy(
                  Point::part, () -> new EnumMap<>(PartKind.class), Collectors.toList()));

  private static final Map<PartKind, List<Sentence>> SENTENCES =
      GROUPS.stream()
          .flatMap(group -> group.sentences().stream())
          .collect(
              Collectors.groupingBy(
                  sentence -> sentence.subject().kind(),
                  () -> new EnumMap<>(PartKind.class),
                  Collectors.toList()));

  private Trade() {}

  static List<Point> points(PartKind kind) {
    return POINTS.getOrDefault(kind, List.of());
  }

  static List<Sentence> sentences(PartKind kind) {
    return SENTENCES.getOrDefault(kind, List.of());
  }

  static boolean isGood(String sign) {
    return GOOD.contains(sign);
  }

  @SafeVarargs
  @SuppressWarnings("varargs") // the array is only read
  static <T> List<T> join(List<T>... lists) {
    return Stream.of(lists).flatMap(List::stream).toList();
  }
}
