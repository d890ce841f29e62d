package org.brakerules.harness.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.brakerules.harness.html.Markup;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.part.PartKind;

/** The parts of a wheel end, each marked with what becomes of it. */
final class PartsPicture {

  private static final int WIDTH = 790;
  private static final int HEIGHT = 420;
  private static final int LETTERS = 15;

  private static final Set<PartKind> HUB =
      EnumSet.of(
          PartKind.HUB,
          PartKind.WHEEL_SEAL,
          PartKind.WHEEL_BEARING,
          PartKind.TONE_RING,
          PartKind.WHEEL_SPEED_SENSOR);

  private final List<Decision> decisions;

  /**
   * Looks at one wheel end.
   *
   * @param decisions the decisions on its parts, in the order of their numbers in the list
   */
  PartsPicture(List<Decision> decisions) {
    this.decisions = List.copyOf(decisions);
  }

  void draw(Markup page, String id) {
    Picture picture =
        new Picture(
            page,
            id,
            "The parts of the wheel end",
            "Left: the brake seen from the wheel. Right: camshaft, adjuster and chamber from the"
                + " side. Each number is that of the list of parts; the list says the same in"
                + " words.",
            WIDTH,
            HEIGHT,
            LETTERS);
    brake(picture);
    shaft(picture);
    chamber(picture);
    if (decisions.stream().anyMatch(one -> HUB.contains(one.part().kind()))) {
      hub(picture);
    }
    for (int i = 0; i < decisions.size(); i++) {
      PartPlaces.Point point = PartPlaces.of(decisions.get(i).part());
      Mark.of(decisions.get(i)).draw(picture, point.x(), point.y(), i + 1);
    }
    picture.finish();
  }

  /** Drum, shoes on their anchor pins, rollers on the S of the cam, and the return spring. */
  private static void brake(Picture picture) {
    picture.circle(212, 214, 184, "white");
    picture.circle(212, 214, 172, "white");
    shoe(picture, -1);
    shoe(picture, 1);
    picture.circle(92, 202, 8, "white");
    picture.circle(92, 226, 8, "white");
    picture.path("M 330 198 C 348 186 372 192 366 214 C 360 236 384 242 398 230", "none", 5);
    picture.circle(338, 186, 9, "white");
    picture.circle(338, 242, 9, "white");
    picture.path(
        "M 290 118 v 24 l -8 8 l 16 10 l -16 10 l 16 10 l -16 10 l 16 10 l -16 10 l 16 10 l -16 10"
            + " l 16 10 l -16 10 l 16 10 l -8 8 v 40",
        "none",
        1.5);
  }

  /** A shoe with its lining; the side is -1 above and 1 below. */
  private static void shoe(Picture picture, int side) {
    int sweep = side < 0 ? 1 : 0;
    picture.path(
        "M 98 %d A 132 132 0 0 %d 330 %d".formatted(214 + side * 56, sweep, 214 + side * 44),
        "none",
        4);
    picture.path(
        "M 92 %d L 98 %d M 338 %d L 330 %d"
            .formatted(214 + side * 14, 214 + side * 56, 214 + side * 28, 214 + side * 44),
        "none",
        4);
    picture.path(
        "M 118 %d A 158 158 0 0 %d 306 %d".formatted(214 + side * 116, sweep, 214 + side * 116),
        "none",
        12);
  }

  private static void shaft(Picture picture) {
    picture.box(420, 204, 350, 20, "white");
    picture.box(452, 192, 210, 10, "silver");
    picture.box(452, 226, 210, 10, "silver");
    picture.dashed(398, 230, 424, 214);
    picture.path("M 688 228 L 694 60 h 20 L 722 228 Z", "white", 1.5);
    picture.words(557, 218, "camshaft", "middle");
  }

  private static void chamber(Picture picture) {
    picture.box(520, 40, 62, 54, "white");
    picture.box(458, 44, 62, 46, "white");
    picture.line(582, 66, 704, 66, 4);
    picture.circle(704, 66, 5, "white");
  }

  private static void hub(Picture picture) {
    picture.words(440, 414, "hub, seal, bearings, ring and sensor", "start");
    picture.box(420, 366, 244, 34, "white");
  }
}
