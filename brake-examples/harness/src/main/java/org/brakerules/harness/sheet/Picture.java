package org.brakerules.harness.sheet;

import org.brakerules.harness.html.Markup;

/**
 * A drawing in black on white inside a page. Its title and description say in words what it shows,
 * for whoever cannot see it.
 */
final class Picture {

  private final Markup out;

  /**
   * Starts a drawing.
   *
   * @param out the page it stands in
   * @param id tells it from the other drawings of the page
   * @param letters how high its letters are, in its own units
   */
  Picture(
      Markup out, String id, String title, String description, int width, int height, int letters) {
    this.out = out;
    out.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        "0 0 " + width + " " + height,
        "role",
        "img",
        "aria-labelledby",
        id + "-title " + id + "-description",
        "font-family",
        "sans-serif",
        "font-size",
        Integer.toString(letters));
    out.element("title", title, "id", id + "-title");
    out.element("desc", description, "id", id + "-description");
  }

  void words(double x, double y, String words, String anchor) {
    out.element("text", words, "x", at(x), "y", at(y), "text-anchor", anchor);
  }

  void bold(double x, double y, String words, String anchor) {
    out.element(
        "text", words, "x", at(x), "y", at(y), "text-anchor", anchor, "font-weight", "bold");
  }

  void box(double x, double y, double width, double height, String fill) {
    out.empty(
        "rect",
        "x",
        at(x),
        "y",
        at(y),
        "width",
        at(width),
        "height",
        at(height),
        "fill",
        fill,
        "stroke",
        "black");
  }

  void line(double x1, double y1, double x2, double y2, double width) {
    out.empty(
        "line",
        "x1",
        at(x1),
        "y1",
        at(y1),
        "x2",
        at(x2),
        "y2",
        at(y2),
        "stroke",
        "black",
        "stroke-width",
        at(width));
  }

  void dashed(double x1, double y1, double x2, double y2) {
    out.empty(
        "line",
        "x1",
        at(x1),
        "y1",
        at(y1),
        "x2",
        at(x2),
        "y2",
        at(y2),
        "stroke",
        "black",
        "stroke-dasharray",
        "5 4");
  }

  void circle(double x, double y, double radius, String fill) {
    out.empty("circle", "cx", at(x), "cy", at(y), "r", at(radius), "fill", fill, "stroke", "black");
  }

  /** A circle that is only hinted at. */
  void dotted(double x, double y, double radius) {
    out.empty(
        "circle",
        "cx",
        at(x),
        "cy",
        at(y),
        "r",
        at(radius),
        "fill",
        "none",
        "stroke",
        "black",
        "stroke-dasharray",
        "1.5 2.5");
  }

  /** A number inside a mark. */
  void number(double x, double y, int number, String ink) {
    out.element(
        "text",
        Integer.toString(number),
        "x",
        at(x),
        "y",
        at(y),
        "text-anchor",
        "middle",
        "font-weight",
        "bold",
        "fill",
        ink);
  }

  /** A line of any shape, as SVG writes a path. */
  void path(String path, String fill, double width) {
    out.empty("path", "d", path, "fill", fill, "stroke", "black", "stroke-width", at(width));
  }

  /** An arrow from one place to another. */
  void arrow(double x1, double y1, double x2, double y2) {
    line(x1, y1, x2, y2, 1.5);
    double length = Math.hypot(x2 - x1, y2 - y1);
    double forwardX = (x2 - x1) / length;
    double forwardY = (y2 - y1) / length;
    path(
        "M %s %s L %s %s L %s %s Z"
            .formatted(
                at(x2),
                at(y2),
                at(x2 - 9 * forwardX + 4 * forwardY),
                at(y2 - 9 * forwardY - 4 * forwardX),
                at(x2 - 9 * forwardX - 4 * forwardY),
                at(y2 - 9 * forwardY + 4 * forwardX)),
        "black",
        1);
  }

  /** Ends the drawing. */
  void finish() {
    out.closeTo("svg");
  }

  /** A tenth of a unit is finer than any printer. */
  private static String at(double place) {
    double tenths = Math.rint(place * 10) / 10;
    return tenths == Math.rint(tenths)
        ? Long.toString(Math.round(tenths))
        : Double.toString(tenths);
  }
}
