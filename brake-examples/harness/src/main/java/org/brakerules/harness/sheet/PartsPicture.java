package org.brakerules.harness.sheet;

import java.util.List;
import org.brakerules.harness.html.Markup;
import org.brakerules.harness.sheet.drawing.Callout;
import org.brakerules.harness.sheet.drawing.Drawn;
import org.brakerules.harness.sheet.drawing.Point;
import org.brakerules.harness.sheet.drawing.Spot;
import org.brakerules.harness.sheet.drawing.WheelEndDrawing;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.Side;

/** The parts of a wheel end, each marked with what becomes of it. */
final class PartsPicture {

  private static final int WIDTH = 790;
  private static final int HEIGHT = 427;
  private static final int HEIGHT_WITH_HUB = 450;
  private static final int LETTERS = 15;

  private final WheelEnd wheelEnd;
  private final List<Mark> marks;
  private final WheelEndDrawing drawing;

  /**
   * Looks at one wheel end.
   *
   * @param decisions the decisions on its parts, in the order of their numbers in the list
   * @param marks what becomes of each, in the same order
   */
  PartsPicture(WheelEnd wheelEnd, List<Decision> decisions, List<Mark> marks) {
    this.wheelEnd = wheelEnd;
    this.marks = List.copyOf(marks);
    this.drawing =
        new WheelEndDrawing(side(), hand(), wheelEnd.layout().camshaft(), spots(decisions));
  }

  private static List<Spot> spots(List<Decision> decisions) {
    return decisions.stream().map(one -> Spot.of(one.part())).toList();
  }

  private Side side() {
    return wheelEnd.path().side();
  }

  private Hand hand() {
    return wheelEnd.layout().camshaftHand();
  }

  void draw(Markup page, String id) {
    Picture picture =
        new Picture(
            page,
            id,
            "The parts of the wheel end",
            inWords(),
            WIDTH,
            drawing.hasHub() ? HEIGHT_WITH_HUB : HEIGHT,
            LETTERS);
    for (Drawn one : drawing.drawn()) {
      picture.outline(one.outline(), one.fill(), one.width(), one.hidden());
    }
    captions(picture);
    List<Callout> callouts = drawing.callouts();
    callouts.forEach(one -> leader(picture, one));
    callouts.forEach(one -> number(picture, one));
    picture.finish();
  }

  private static void leader(Picture picture, Callout one) {
    Point number = one.number();
    Point part = one.part();
    picture.line(number.x(), number.y(), part.x(), part.y(), 0.8);
    picture.dot(part.x(), part.y());
  }

  private void number(Picture picture, Callout one) {
    marks.get(one.index()).draw(picture, one.number().x(), one.number().y(), one.index() + 1);
  }

  private void captions(Picture picture) {
    String side = side() == Side.LEFT ? "Left" : "Right";
    String front = side() == Side.LEFT ? "left" : "right";
    picture.words(200, 405, side + " brake seen from the wheel, released;", "middle");
    picture.words(200, 422, "cam drawn behind the axle, front to the " + front, "middle");
    picture.words(595, 192, "Arm and chamber, seen from the wheel too", "middle");
    picture.words(595, 367, "Camshaft cut along its length, cam head left", "middle");
    if (drawing.hasHub()) {
      picture.words(640, 424, "Hub cut in half,", "start");
      picture.words(640, 441, "wheel left", "start");
    }
  }

  /** What the drawing shows, for whoever cannot see it. */
  String inWords() {
    return "The brake seen from the wheel: the S of the cam between the two rollers, each in its"
        + " crook; the anchor pins opposite; the linings inside the drum. Beside it arm, rod and"
        + " chamber seen from the wheel as well, and the camshaft cut along its length. "
        + CamTurn.inWords(hand())
        + " Each number is that of the list of parts; the list says the same in words.";
  }
}
