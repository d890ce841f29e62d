package org.brakerules.harness.figures;

import java.util.List;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import org.brakerules.calc.stroke.LostMotion;
import org.brakerules.calc.stroke.StrokeCost;
import org.brakerules.model.quantity.Length;

/** Draws what each looseness costs in stroke: a black bar the estimate, an open one the bound. */
final class StrokeBudget {

  private static final int LABELS = 250;
  private static final int ROOM = 280;
  private static final int ROW = 34;
  private static final int TOP = 56;
  private static final int BAR = 16;

  private final String title;
  private final LostMotion lost;

  StrokeBudget(String wheelEnd, LostMotion lost) {
    this.title = "Lost motion as push-rod stroke, " + wheelEnd;
    this.lost = lost;
  }

  String draw() throws XMLStreamException {
    List<StrokeCost> costs = lost.costs();
    int rows = costs.size() + (lost.armMovement().isPresent() ? 1 : 0) + 1;
    Drawing drawing = new Drawing(title, inWords(), TOP + rows * ROW + 40);
    int y = TOP;
    for (StrokeCost cost : costs) {
      bar(drawing, y, cost.looseness().inWords(), cost.stroke().value(), cost.bound().value());
      y += ROW;
    }
    if (lost.armMovement().isPresent()) {
      Length measured = lost.armMovement().get();
      bar(drawing, y, "arm, cam held: measured", measured, measured);
      y += ROW;
    }
    Length total = lost.total().value();
    bar(drawing, y, "lost motion known", total, lost.most().value());
    drawing.words(
        16, y + ROW + 16, "black: estimate, open: at the very most; estimates only", "start", 12);
    return drawing.finish();
  }

  private void bar(Drawing drawing, int y, String name, Length estimate, Length bound)
      throws XMLStreamException {
    drawing.words(LABELS - 10, y + BAR - 3, name, "end", 13);
    drawing.box(LABELS, y, width(bound), BAR, "white", "black");
    drawing.box(LABELS, y, width(estimate), BAR, "black", "black");
    String most = bound.compareTo(estimate) > 0 ? ", at most " + Shown.estimate(bound) : "";
    drawing.words(
        LABELS + width(bound) + 8, y + BAR - 3, Shown.estimate(estimate) + most, "start", 13);
  }

  private int width(Length length) {
    long widest = lost.most().value().nanometres();
    return widest == 0 ? 0 : (int) (ROOM * length.nanometres() / widest);
  }

  private String inWords() {
    return lost.costs().stream()
        .map(
            cost ->
                cost.looseness().inWords()
                    + " "
                    + Shown.estimate(cost.stroke().value())
                    + ", at most "
                    + Shown.estimate(cost.bound().value()))
        .collect(
            Collectors.joining(
                "; ", "", "; lost motion known " + Shown.estimate(lost.total().value()) + "."));
  }
}
