package org.brakerules.harness.sheet.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight line, level or upright, on which numbers stand.
 *
 * @param from its left or upper end
 * @param to its right or lower end
 */
record Rail(Point from, Point to) {

  /** From the middle of one number to that of the next. */
  static final double APART = 30;

  static Rail level(double y, double from, double to) {
    return new Rail(new Point(from, y), new Point(to, y));
  }

  static Rail upright(double x, double from, double to) {
    return new Rail(new Point(x, from), new Point(x, to));
  }

  /** How far along the rail a point lies. */
  double along(Point point) {
    return isLevel() ? point.x() - from.x() : point.y() - from.y();
  }

  private boolean isLevel() {
    return from.y() == to.y();
  }

  Rail mirrored(double axis) {
    Point one = from.mirrored(axis);
    Point other = to.mirrored(axis);
    return one.x() <= other.x() ? new Rail(one, other) : new Rail(other, one);
  }

  /**
   * Stands numbers as near to what they point at as their neighbours allow.
   *
   * @param wanted what they point at, in the order of the rail
   */
  List<Point> stand(List<Point> wanted) {
    List<Double> places = settled(wanted);
    List<Point> standing = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      double place = places.get(i) + i * APART;
      standing.add(isLevel() ? from.plus(place, 0) : from.plus(0, place));
    }
    return standing;
  }

  /** Those that want to stand too close form a group, and the group stands about its middle. */
  private List<Double> settled(List<Point> wanted) {
    List<List<Double>> groups = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      List<Double> group = new ArrayList<>(List.of(along(wanted.get(i)) - i * APART));
      while (!groups.isEmpty() && middle(groups.get(groups.size() - 1)) >= middle(group)) {
        group.addAll(groups.remove(groups.size() - 1));
      }
      groups.add(group);
    }
    double room = Math.max(0, along(to) - (wanted.size() - 1) * APART);
    List<Double> places = new ArrayList<>();
    for (List<Double> group : groups) {
      double middle = Math.max(0, Math.min(room, middle(group)));
      group.forEach(one -> places.add(middle));
    }
    return places;
  }

  private static double middle(List<Double> group) {
    return group.stream().mapToDouble(one -> one).average().orElseThrow();
  }
}
