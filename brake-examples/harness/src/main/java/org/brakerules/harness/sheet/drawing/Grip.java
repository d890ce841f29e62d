package org.brakerules.harness.sheet.drawing;

/**
 * Where the line from a number ends on its part, and where the number may stand.
 *
 * @param point the point of the part
 * @param rail where the number stands
 */
record Grip(Point point, Rail rail) {

  Grip mirrored(double axis) {
    return new Grip(point.mirrored(axis), rail.mirrored(axis));
  }
}
