package org.brakerules.harness.sheet.drawing;

/**
 * A point of a drawing.
 *
 * @param x from the left
 * @param y from the top
 */
public record Point(double x, double y) {

  /** The point so far to the right and so far down. */
  public Point plus(double right, double down) {
    return new Point(x + right, y + down);
  }

  /**
   * The point of a circle about this one.
   *
   * @param degrees from the right, against the clock
   */
  public Point around(double radius, double degrees) {
    double turned = Math.toRadians(degrees);
    return plus(radius * Math.cos(turned), -radius * Math.sin(turned));
  }

  /** How far another point is away. */
  public double to(Point other) {
    return Math.hypot(other.x - x, other.y - y);
  }

  /** The point on the other side of an upright line. */
  public Point mirrored(double axis) {
    return new Point(2 * axis - x, y);
  }
}
