package org.brakerules.harness.sheet.drawing;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A line through points, or the edge of a shape; curves are short straight pieces.
 *
 * @param loops its lines; a ring has two
 * @param closed whether each line returns to its first point
 */
public record Outline(List<List<Point>> loops, boolean closed) {

  /** Keeps its own copies of the lists. */
  public Outline {
    loops = loops.stream().map(List::copyOf).toList();
  }

  static Outline line(Point... points) {
    return new Outline(List.of(List.of(points)), false);
  }

  static Outline shape(List<Point> points) {
    return new Outline(List.of(points), true);
  }

  static Outline shape(Point... points) {
    return shape(List.of(points));
  }

  static Outline box(double x, double y, double width, double height) {
    Point corner = new Point(x, y);
    return shape(corner, corner.plus(width, 0), corner.plus(width, height), corner.plus(0, height));
  }

  static Outline disc(Point centre, double radius) {
    return shape(circle(centre, radius));
  }

  static Outline ring(Point centre, double inner, double outer) {
    return new Outline(List.of(circle(centre, outer), circle(centre, inner)), true);
  }

  /** A piece of a circle, from one angle to another, in degrees against the clock. */
  static Outline arc(Point centre, double radius, double from, double to) {
    return new Outline(List.of(curve(centre, radius, from, to)), false);
  }

  /** A piece of a ring. */
  static Outline band(Point centre, double inner, double outer, double from, double to) {
    return shape(
        Stream.concat(
                curve(centre, outer, from, to).stream(), curve(centre, inner, to, from).stream())
            .toList());
  }

  /** A coil spring from one point down to another below it. */
  static Outline spring(Point top, double length, double half) {
    int turns = 14;
    double hook = length / 5;
    double pitch = (length - 2 * hook) / turns;
    return new Outline(
        List.of(
            Stream.of(
                    Stream.of(top, top.plus(0, hook)),
                    IntStream.range(0, turns)
                        .mapToObj(
                            i -> top.plus(i % 2 == 0 ? half : -half, hook + (i + 0.5) * pitch)),
                    Stream.of(top.plus(0, length - hook), top.plus(0, length)))
                .flatMap(points -> points)
                .toList()),
        false);
  }

  static List<Point> curve(Point centre, double radius, double from, double to) {
    int pieces = Math.max(4, (int) (Math.abs(to - from) / 360 * about(radius)));
    return DoubleStream.iterate(0, i -> i <= pieces, i -> i + 1)
        .mapToObj(i -> centre.around(radius, from + (to - from) * i / pieces))
        .toList();
  }

  private static List<Point> circle(Point centre, double radius) {
    return curve(centre, radius, 0, 360).stream().skip(1).toList();
  }

  /** So many pieces that the corners of a circle cannot be seen. */
  private static double about(double radius) {
    return Math.max(20, 7 * Math.sqrt(radius));
  }

  Outline mirrored(double axis) {
    return new Outline(
        loops.stream()
            .map(loop -> loop.stream().map(point -> point.mirrored(axis)).toList())
            .toList(),
        closed);
  }
}
