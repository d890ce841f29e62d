package org.brakerules.harness.sheet;

import java.util.List;
import org.brakerules.harness.html.Markup;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.reading.Station;

/**
 * The camshaft cut along its length: bushings, seals with the way each lip faces, the way of the
 * grease and where it leaves. The cam head is on the left, the adjuster on the right.
 */
final class CamshaftPicture {

  private static final int WIDTH = 715;
  private static final int HEIGHT = 254;
  private static final int LETTERS = 19;

  /** The middle of the shaft, and how far its skin and the bore lie from it. */
  private static final int MIDDLE = 120;

  private static final int SHAFT = 22;
  private static final int BORE = 44;
  private static final int WALL = 14;

  /** Where the housing ends above and below. */
  private static final int TOP = MIDDLE - BORE - WALL;

  private static final int BOTTOM = MIDDLE + BORE + WALL;

  private final CamshaftLayout layout;
  private final SealDirections seals;

  CamshaftPicture(CamshaftLayout layout, SealDirections seals) {
    this.layout = layout;
    this.seals = seals;
  }

  void draw(Markup page, String id) {
    Picture picture =
        new Picture(
            page, id, "The camshaft cut along its length", inWords(), WIDTH, HEIGHT, LETTERS);
    housing(picture);
    shaft(picture);
    seal(picture, Station.HEAD_END, 168);
    seal(picture, Station.SPLINE_END, 560);
    grease(picture);
    picture.finish();
    notes(page);
  }

  /** What the drawing shows, for whoever cannot see it. */
  String inWords() {
    return "Cam head on the left, adjuster on the right. "
        + "Head end: "
        + seals.inWords(Station.HEAD_END)
        + " Adjuster end: "
        + seals.inWords(Station.SPLINE_END)
        + " "
        + purge();
  }

  /** One tube from end to end, or a spider and a bracket with open shaft between. */
  private void housing(Picture picture) {
    picture.box(120, MIDDLE - 90, 26, 180, "white");
    picture.words(133, MIDDLE - 98, "spider", "middle");
    if (layout == CamshaftLayout.SPLIT) {
      bore(picture, 146, 120);
      bore(picture, 480, 120);
    } else {
      bore(picture, 146, 454);
    }
    bushing(picture, 196);
    picture.words(246, TOP - 9, "bushing", "start");
    picture.line(252, TOP - 6, 246, MIDDLE - SHAFT - 12, 1);
    bushing(picture, 486);
    picture.words(502, TOP - 9, "bushing", "end");
    picture.line(496, TOP - 6, 502, MIDDLE - SHAFT - 12, 1);
  }

  private static void bore(Picture picture, int from, int length) {
    picture.box(from, TOP, length, WALL, "silver");
    picture.box(from, MIDDLE + BORE, length, WALL, "silver");
  }

  private static void bushing(Picture picture, int from) {
    for (int y : List.of(MIDDLE - BORE, MIDDLE + SHAFT)) {
      picture.box(from, y, 62, BORE - SHAFT, "white");
      for (int x = from + 8; x < from + 62; x += 9) {
        picture.line(x, y + BORE - SHAFT, x + 8, y, 1);
      }
    }
  }

  private static void shaft(Picture picture) {
    picture.box(60, MIDDLE - SHAFT, 640, 2 * SHAFT, "white");
    picture.box(40, MIDDLE - 52, 58, 104, "white");
    picture.box(106, MIDDLE - 34, 8, 68, "gray");
    for (int y = MIDDLE - SHAFT + 6; y < MIDDLE + SHAFT; y += 8) {
      picture.line(640, y, 700, y, 1);
    }
    picture.box(616, MIDDLE - 74, 34, 148, "white");
    picture.words(62, MIDDLE - 60, "cam head", "middle");
    picture.words(6, MIDDLE + 118, "head washer", "start");
    picture.line(110, MIDDLE + 100, 110, MIDDLE + 36, 1);
    picture.words(633, MIDDLE - 82, "adjuster", "middle");
    picture.words(684, MIDDLE + 38, "spline", "middle");
  }

  /** The case sits in the bore, and the lip leans from its back to the shaft at its open side. */
  private void seal(Picture picture, Station station, int x) {
    LipToFace toFace = seals.toFace(station);
    if (toFace == LipToFace.NO_DIRECTION) {
      picture.circle(x + 9, MIDDLE - BORE + 10, 10, "black");
      picture.circle(x + 9, MIDDLE + BORE - 10, 10, "black");
      return;
    }
    boolean known = toFace == LipToFace.TOWARD_ADJUSTER;
    lip(picture, x, known, -1);
    lip(picture, x, known, 1);
    if (known) {
      picture.arrow(x - 4, BOTTOM + 12, x + 34, BOTTOM + 12);
      picture.words(
          station == Station.HEAD_END ? x - 14 : x - 44, BOTTOM + 32, "open side", "start");
    } else {
      picture.bold(x + 10, BOTTOM + 22, "?");
    }
  }

  /** The seal as it is cut; the side is -1 above the shaft and 1 below. */
  private static void lip(Picture picture, int x, boolean known, int side) {
    int bore = MIDDLE + side * BORE;
    int skin = MIDDLE + side * (SHAFT + 1);
    picture.path("M %d %d h 20".formatted(x, bore - side * 3), "none", 6);
    String shape =
        known
            ? "M %d %d V %d L %d %d".formatted(x + 2, bore, bore - side * 8, x + 20, skin)
            : "M %d %d V %d".formatted(x + 10, bore, skin);
    picture.path(shape, "none", 3);
  }

  private void grease(Picture picture) {
    int low = MIDDLE + SHAFT + 11;
    switch (layout) {
      case TUBE -> {
        fitting(picture, 370);
        picture.arrow(350, low, 266, low);
        picture.arrow(390, low, 480, low);
        picture.arrow(608, low, 608, MIDDLE + 106);
        picture.words(712, MIDDLE + 124, "surplus grease leaves here", "end");
      }
      case SPLIT -> {
        fitting(picture, 226);
        fitting(picture, 516);
        picture.arrow(272, low, 292, MIDDLE + 106);
        picture.words(
            712, MIDDLE + 124, "old grease leaves at the inner face of the spider", "end");
      }
      case CLOSED, UNKNOWN -> {}
    }
  }

  private static void fitting(Picture picture, int x) {
    picture.path("M %d %d v -14 h -5 v -10 h 14 v 10 h -5 v 14".formatted(x, TOP), "white", 1.5);
    picture.words(x + 4, TOP - 30, "grease fitting", "middle");
    picture.arrow(x + 2, TOP + 2, x + 2, MIDDLE - SHAFT - 4);
  }

  private void notes(Markup page) {
    page.element("p", "Head end: " + seals.inWords(Station.HEAD_END), "class", "note");
    page.element("p", "Adjuster end: " + seals.inWords(Station.SPLINE_END), "class", "note");
    page.element("p", purge(), "class", "note");
  }

  private String purge() {
    return switch (layout) {
      case TUBE ->
          "Purge with a hand gun before the shoes go on: grease at the adjuster end, none under the"
              + " cam head.";
      case SPLIT ->
          "Purge each bushing with a hand gun before the shoes go on; each has its own outlet.";
      case CLOSED -> "Filled for life: its maker decides about grease.";
      case UNKNOWN -> "How the camshaft is carried is not stated: no way of the grease is drawn.";
    };
  }
}
