package org.brakerules.harness.sheet.drawing;

import java.util.ArrayList;
import java.util.List;
import org.brakerules.model.part.Hand;

/**
 * The S of the cam as it stands at rest, seen from its head, one roller above it and one below.
 *
 * <p>It is worked out, not copied: each turn of the shaft lifts a roller by the same amount, as the
 * lift radius says, so the middle of a roller runs on a spiral about the shaft and the cam is that
 * spiral less the roller. Behind the beginning of one spiral stands the nose of the other. Between
 * them lies the crook, which holds the roller at rest.
 *
 * <p>A left-hand shaft is drawn turning to the left when it applies the brake, against the clock,
 * and its outline reads as an S; a right-hand shaft is its mirror image.
 */
public final class CamProfile {

  /** The radius of a roller. */
  public static final double ROLLER = 13;

  /** From the middle of the shaft to the middle of a roller at rest. */
  public static final double AT_REST = 26.5;

  /** How far one radian lifts a roller. */
  private static final double LIFT = 9;

  /** How far the cam can turn until a roller is at the nose, in radians. */
  private static final double SWEEP = 2.2;

  private static final double NOSE = 6;

  private CamProfile() {}

  /**
   * The outline of the cam.
   *
   * @param centre the middle of the shaft
   * @param hand left or right
   */
  public static List<Point> of(Point centre, Hand hand) {
    List<Point> half = half();
    double side = hand == Hand.RIGHT ? -1 : 1;
    List<Point> outline = new ArrayList<>();
    for (int turned : List.of(1, -1)) {
      half.forEach(one -> outline.add(centre.plus(turned * side * one.x(), turned * one.y())));
    }
    return outline;
  }

  /** From where the upper roller rests, with the clock, to where the lower one rests. */
  private static List<Point> half() {
    Point shaft = new Point(0, 0);
    List<Point> half = new ArrayList<>();
    int pieces = 24;
    for (int i = 0; i <= pieces; i++) {
      half.add(track(SWEEP * i / pieces));
    }
    double out = outward(SWEEP);
    Point nose = track(SWEEP).around(-NOSE, out);
    Point roller = shaft.plus(0, AT_REST);
    double between = roller.to(nose);
    double way = Math.toDegrees(Math.atan2(roller.y() - nose.y(), nose.x() - roller.x()));
    double wall = way + Math.toDegrees(Math.acos((ROLLER + NOSE) / between));
    half.addAll(Outline.curve(nose, NOSE, out, wall - 180));
    half.addAll(Outline.curve(roller, ROLLER, wall, outward(0)));
    return half;
  }

  /** Where the roller touches when the cam has turned so far, with the clock from the top. */
  private static Point track(double turned) {
    double degrees = 90 - Math.toDegrees(turned);
    Point roller = new Point(0, 0).around(AT_REST + LIFT * turned, degrees);
    return roller.around(-ROLLER, outward(turned));
  }

  /** The way from the cam to the middle of the roller, square to both, in degrees. */
  private static double outward(double turned) {
    double lean = Math.toDegrees(Math.atan(LIFT / (AT_REST + LIFT * turned)));
    return 90 - Math.toDegrees(turned) + lean;
  }
}
