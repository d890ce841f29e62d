package org.brakerules.harness.sheet.drawing;

import java.util.List;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.reading.Station;

/** What lies along the camshaft, cut through its middle: the cam head on the left. */
final class ShaftView {

  private static final double Y = 276;
  private static final double SHAFT = 9;
  private static final double BORE = 19;
  private static final double TUBE = 26;

  private static final Rail ABOVE = Rail.level(Y - 62, 424, 768);
  private static final Rail BELOW = Rail.level(Y + 62, 424, 768);

  private final Sketch sketch;
  private final CamshaftLayout layout;

  private ShaftView(Sketch sketch, CamshaftLayout layout) {
    this.sketch = sketch;
    this.layout = layout;
  }

  static void draw(Sketch sketch, CamshaftLayout layout) {
    ShaftView view = new ShaftView(sketch, layout);
    view.housing();
    sketch.other(Outline.box(434, Y - SHAFT, 336, 2 * SHAFT), "white", 1.5);
    sketch.other(Outline.box(414, Y - 30, 20, 60), "white", 1.5);
    for (double y : List.of(Y - 5, Y, Y + 5)) {
      sketch.other(Outline.line(new Point(668, y), new Point(770, y)), "none", 0.7);
    }
    view.carried(Station.HEAD_END, view.isSplit() ? 466 : 478, 486);
    view.carried(Station.SPLINE_END, 634, 594);
    view.stacks();
    view.fittings();
  }

  private boolean isSplit() {
    return layout == CamshaftLayout.SPLIT;
  }

  private void housing() {
    sketch.other(Outline.box(462, Y - 42, 10, 84), "silver", 1);
    Spot bracket = Spot.of(PartKind.CAMSHAFT_BRACKET);
    if (isSplit()) {
      bore(bracket, 586, 60);
      wall(462, 60);
    } else {
      bore(bracket, 472, 174);
    }
    sketch.grip(bracket, new Point(isSplit() ? 590 : 560, Y + 22), BELOW);
  }

  private void bore(Spot bracket, double from, double length) {
    sketch.part(bracket, Outline.box(from, Y - TUBE, length, TUBE - BORE), "silver", 1);
    sketch.part(bracket, Outline.box(from, Y + BORE, length, TUBE - BORE), "silver", 1);
  }

  private void wall(double from, double length) {
    sketch.other(Outline.box(from, Y - TUBE, length, TUBE - BORE), "silver", 1);
    sketch.other(Outline.box(from, Y + BORE, length, TUBE - BORE), "silver", 1);
  }

  private void carried(Station station, double seal, double bushing) {
    Spot sealSpot = new Spot(PartKind.CAMSHAFT_SEAL, station);
    Spot bushingSpot = new Spot(PartKind.CAMSHAFT_BUSHING, station);
    for (double top : List.of(Y - BORE, Y + SHAFT)) {
      sketch.part(bushingSpot, Outline.box(bushing, top, 30, BORE - SHAFT), "white", 1);
      for (int x = 0; x < 30; x += 6) {
        sketch.other(
            Outline.line(
                new Point(bushing + x, top + BORE - SHAFT), new Point(bushing + x + 6, top)),
            "none",
            0.7);
      }
      if (sketch.wants(sealSpot)) {
        sketch.part(sealSpot, Outline.box(seal, top, 6, BORE - SHAFT), "gray", 1);
      }
    }
    sketch.grip(bushingSpot, new Point(bushing + 15, Y - 14), ABOVE);
    sketch.grip(sealSpot, new Point(seal + 3, Y + 14), BELOW);
  }

  private void stacks() {
    washer(Spot.of(PartKind.HEAD_WASHER), 438, 4, 18, "white");
    double head = isSplit() ? 526 : 444;
    washer(new Spot(PartKind.SPACER, Station.HEAD_END), head, 5, 15, "white");
    washer(new Spot(PartKind.SHIM, Station.HEAD_END), head + 7, 3, 15, "black");
    washer(new Spot(PartKind.SNAP_RING, Station.HEAD_END), head + 13, 4, 14, "gray");
    washer(new Spot(PartKind.SPACER, Station.SPLINE_END), 652, 9, 15, "white");
    sketch.other(Outline.box(666, Y - 36, 34, 72), "white", 1.5);
    washer(new Spot(PartKind.SHIM, Station.SPLINE_END), 706, 4, 18, "black");
    washer(new Spot(PartKind.SNAP_RING, Station.SPLINE_END), 724, 6, 14, "gray");
  }

  private void washer(Spot spot, double x, double width, double half, String fill) {
    if (sketch.wants(spot)) {
      sketch.part(spot, Outline.box(x, Y - half, width, 2 * half), fill, 1);
      sketch.grip(spot, new Point(x + width / 2, Y + half - 2), BELOW);
    }
  }

  private void fittings() {
    fitting(Station.TUBE, 560);
    fitting(Station.HEAD_END, 514);
    fitting(Station.SPLINE_END, 612);
  }

  private void fitting(Station station, double x) {
    Spot fitting = new Spot(PartKind.GREASE_FITTING, station);
    if (sketch.wants(fitting)) {
      sketch.part(fitting, Outline.box(x - 3, Y - TUBE - 9, 6, 9), "gray", 1);
      sketch.grip(fitting, new Point(x, Y - TUBE - 6), ABOVE);
    }
  }
}
