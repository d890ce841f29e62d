package org.brakerules.harness.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.harness.html.Markup;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.part.CamshaftSeal;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.LipDirection;
import org.brakerules.model.part.SealKind;
import org.brakerules.model.reading.Station;

/**
 * The camshaft cut along its length: bushings, seals with the way each lip faces, the way of the
 * grease and where it leaves. The cam head is on the left, the adjuster on the right.
 */
final class CamshaftPicture {

  private static final int WIDTH = 715;
  private static final int HEIGHT = 284;
  private static final int LETTERS = 19;

  /** The middle of the shaft, and how far its skin and the bore lie from it. */
  private static final int MIDDLE = 150;

  private static final int SHAFT = 22;
  private static final int BORE = 44;
  private static final int WALL = 14;

  private final CamshaftLayout layout;
  private final List<CamshaftSeal> seals;

  /**
   * Looks at one wheel end.
   *
   * @param seals the seals of the job, at whichever station
   */
  CamshaftPicture(CamshaftLayout layout, List<CamshaftSeal> seals) {
    this.layout = layout;
    this.seals = List.copyOf(seals);
  }

  void draw(Markup page, String id) {
    Picture picture =
        new Picture(
            page, id, "The camshaft cut along its length", inWords(), WIDTH, HEIGHT, LETTERS);
    housing(picture);
    shaft(picture);
    seal(picture, Station.HEAD_END, headSeal());
    seal(picture, Station.SPLINE_END, splineSeal());
    grease(picture);
    picture.finish();
    notes(page);
  }

  /** What the drawing shows, for whoever cannot see it. */
  String inWords() {
    return "Cam head on the left, adjuster on the right. "
        + "Head end: "
        + note(Station.HEAD_END)
        + " Adjuster end: "
        + note(Station.SPLINE_END)
        + " "
        + purge();
  }

  private boolean isSplit() {
    return layout == CamshaftLayout.SPLIT;
  }

  private int headSeal() {
    return 168;
  }

  private int splineSeal() {
    return 560;
  }

  /** One tube from end to end, or a spider and a bracket with open shaft between. */
  private void housing(Picture picture) {
    picture.box(120, MIDDLE - 90, 26, 180, "white");
    picture.words(133, MIDDLE - 98, "spider", "middle");
    if (isSplit()) {
      bore(picture, 146, 120);
      bore(picture, 480, 120);
    } else {
      bore(picture, 146, 454);
    }
    bushing(picture, 196, 247);
    bushing(picture, 486, 497);
  }

  private static void bore(Picture picture, int from, int length) {
    picture.box(from, MIDDLE - BORE - WALL, length, WALL, "silver");
    picture.box(from, MIDDLE + BORE, length, WALL, "silver");
  }

  /** Its name stands clear of the words on the seal beside it. */
  private static void bushing(Picture picture, int from, int name) {
    for (int y : List.of(MIDDLE - BORE, MIDDLE + SHAFT)) {
      picture.box(from, y, 62, BORE - SHAFT, "white");
      for (int x = from + 8; x < from + 62; x += 9) {
        picture.line(x, y + BORE - SHAFT, x + 8, y, 1);
      }
    }
    picture.words(name, MIDDLE + BORE + WALL + 18, "bushing", "middle");
  }

  private static void shaft(Picture picture) {
    picture.box(60, MIDDLE - SHAFT, 640, 2 * SHAFT, "white");
    picture.box(40, MIDDLE - 52, 58, 104, "white");
    picture.box(106, MIDDLE - 34, 8, 68, "gray");
    for (int y = MIDDLE - SHAFT + 6; y < MIDDLE + SHAFT; y += 8) {
      picture.line(640, y, 700, y, 1);
    }
    picture.box(616, MIDDLE - 74, 34, 148, "white");
    picture.words(69, MIDDLE - 60, "cam head", "middle");
    picture.words(110, MIDDLE + 118, "head washer", "middle");
    picture.line(110, MIDDLE + 98, 110, MIDDLE + 36, 1);
    picture.words(633, MIDDLE - 82, "adjuster", "middle");
    picture.words(684, MIDDLE + 38, "spline", "middle");
  }

  /** The case sits in the bore, and the lip leans from its back to the shaft at its open side. */
  private void seal(Picture picture, Station station, int x) {
    LipToFace toFace = toFace(station);
    if (toFace == LipToFace.NO_DIRECTION) {
      picture.circle(x + 9, MIDDLE - BORE + 10, 10, "black");
      picture.circle(x + 9, MIDDLE + BORE - 10, 10, "black");
      return;
    }
    boolean known = toFace == LipToFace.TOWARD_ADJUSTER;
    for (int side : List.of(-1, 1)) {
      int bore = MIDDLE + side * BORE;
      int skin = MIDDLE + side * (SHAFT + 1);
      picture.path("M %d %d h 20".formatted(x, bore - side * 3), "none", 6);
      if (known) {
        picture.path(
            "M %d %d V %d L %d %d".formatted(x + 2, bore, bore - side * 8, x + 20, skin),
            "none",
            3);
      } else {
        picture.path("M %d %d V %d".formatted(x + 10, bore, skin), "none", 3);
      }
    }
    if (known) {
      int below = MIDDLE + BORE + WALL + 14;
      picture.arrow(x - 4, below, x + 34, below);
      picture.words(x + 18, below + 18, "open side", "middle");
    } else {
      picture.bold(x + 10, MIDDLE + BORE + WALL + 22, "?", "middle");
    }
  }

  private void grease(Picture picture) {
    int low = MIDDLE + SHAFT + 11;
    switch (layout) {
      case TUBE -> {
        fitting(picture, 370);
        picture.arrow(350, low, 266, low);
        picture.arrow(390, low, 480, low);
        picture.arrow(592, low, 646, low + 74);
        picture.words(712, MIDDLE + 124, "surplus grease leaves here", "end");
      }
      case SPLIT -> {
        fitting(picture, 226);
        fitting(picture, 516);
        picture.arrow(264, low, 306, low + 72);
        picture.words(
            712, MIDDLE + 124, "old grease leaves at the inner face of the spider", "end");
      }
      case CLOSED, UNKNOWN -> {}
    }
  }

  private static void fitting(Picture picture, int x) {
    picture.path(
        "M %d %d v -14 h -5 v -10 h 14 v 10 h -5 v 14".formatted(x, MIDDLE - BORE - WALL),
        "white",
        1.5);
    picture.words(x + 4, MIDDLE - BORE - WALL - 30, "grease fitting", "middle");
    picture.arrow(x + 2, MIDDLE - BORE - WALL + 2, x + 2, MIDDLE - SHAFT - 4);
  }

  private void notes(Markup page) {
    page.element("p", "Head end: " + note(Station.HEAD_END), "class", "note");
    page.element("p", "Adjuster end: " + note(Station.SPLINE_END), "class", "note");
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

  private String note(Station station) {
    String found =
        at(station).stream()
            .filter(seal -> seal.lip() != LipDirection.UNKNOWN)
            .map(seal -> saw(seal, toFace(station)))
            .collect(Collectors.joining(", "));
    return toFace(station).inWords() + (found.isEmpty() ? "" : "; " + found) + ".";
  }

  private static String saw(CamshaftSeal seal, LipToFace toFace) {
    String way = seal.lip() == LipDirection.TOWARD_HEAD ? "the cam head" : "the adjuster";
    return (seal.condition() == Condition.NEW ? "fitted" : "found")
        + " toward "
        + way
        + (toFace.forbids(seal.lip()) ? ", the wrong way round" : "");
  }

  private LipToFace toFace(Station station) {
    List<LipToFace> all = new ArrayList<>();
    for (CamshaftSeal seal : at(station)) {
      all.add(LipToFace.of(layout, station, seal.kind()));
    }
    return all.stream()
        .filter(one -> one != LipToFace.NO_DIRECTION)
        .findFirst()
        .orElse(
            all.isEmpty()
                ? LipToFace.of(layout, station, SealKind.UNKNOWN)
                : LipToFace.NO_DIRECTION);
  }

  private List<CamshaftSeal> at(Station station) {
    return seals.stream().filter(seal -> seal.station() == station).toList();
  }
}
