package org.brakerules.linter.internal.check;

import java.util.List;

/** The words of a table of inspection points that stand in no type of the model. */
final class Point {

  static final String FAULT = "fault";
  static final String GOOD = "good";
  static final String FACT = "fact";

  /** When a point is needed. */
  static final List<String> NEEDED = List.of("always", "with-limit", "on-demand");

  /** Whether the brake is applied for it. */
  static final List<String> BRAKE = List.of("at-rest", "applied");

  /** What it means if it is seen. */
  static final List<String> FINDS = List.of(FAULT, GOOD, FACT);

  /** What a property begins with that the layout has, not the part. */
  static final String OF_LAYOUT = "layout.";

  /** The one property of a vehicle that a point asks for. */
  static final String BUILT_ON = "vehicle.builtOn";

  private Point() {}
}
