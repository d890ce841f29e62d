package org.brakerules.harness.sheet.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;

/** What can be measured of a drawn shape. */
final class Shapes {

  private Shapes() {}

  /** How far a point is from the line of a shape. */
  static double toLine(Outline outline, Point point) {
    double least = Double.MAX_VALUE;
    for (List<Point> loop : outline.loops()) {
      int pieces = outline.closed() ? loop.size() : loop.size() - 1;
      for (int i = 0; i < pieces; i++) {
        Point one = loop.get(i);
        Point next = loop.get((i + 1) % loop.size());
        least =
            Math.min(
                least,
                Line2D.ptSegDist(one.x(), one.y(), next.x(), next.y(), point.x(), point.y()));
      }
    }
    return least;
  }

  static boolean isInside(Outline outline, Point point) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (List<Point> loop : outline.loops()) {
      path.moveTo(loop.get(0).x(), loop.get(0).y());
      loop.stream().skip(1).forEach(next -> path.lineTo(next.x(), next.y()));
      path.closePath();
    }
    return outline.closed() && path.contains(point.x(), point.y());
  }

  static List<Point> points(Outline outline) {
    return outline.loops().stream().flatMap(List::stream).toList();
  }

  /** The outline turned about a point, against the clock. */
  static Outline turned(List<Point> points, Point centre, double degrees) {
    return Outline.shape(
        points.stream()
            .map(
                one ->
                    centre.around(
                        centre.to(one),
                        Math.toDegrees(Math.atan2(centre.y() - one.y(), one.x() - centre.x()))
                            + degrees))
            .toList());
  }
}
