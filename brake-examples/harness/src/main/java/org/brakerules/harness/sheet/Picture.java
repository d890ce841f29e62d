package org.brakerules.harness.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.harness.html.Markup;
import org.brakerules.harness.sheet.drawing.Outline;

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

  void bold(double x, double y, String words) {
    heavy(x, y, words, "black");
  }

  /** A number inside a mark. */
  void number(double x, double y, int number, String ink) {
    heavy(x, y, Integer.toString(number), ink);
  }

  private void heavy(double x, double y, String words, String ink) {
    out.element(
        "text",
        words,
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

  void box(double x, double y, double width, double height, String fill) {
    shape(
        List.of(
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
            fill));
  }

  void line(double x1, double y1, double x2, double y2, double width) {
    shape(
        List.of(
            "line",
            "x1",
            at(x1),
            "y1",
            at(y1),
            "x2",
            at(x2),
            "y2",
            at(y2),
            "stroke-width",
            at(width)));
  }

  void circle(double x, double y, double radius, String fill) {
    round(x, y, radius, fill, List.of());
  }

  void dashedCircle(double x, double y, double radius, String fill) {
    round(x, y, radius, fill, List.of("stroke-width", "1.5", "stroke-dasharray", "6 3"));
  }

  /** A circle that is only hinted at. */
  void dotted(double x, double y, double radius) {
    round(x, y, radius, "none", List.of("stroke-dasharray", "1.5 2.5"));
  }

  private void round(double x, double y, double radius, String fill, List<String> line) {
    List<String> attributes = new ArrayList<>(List.of("circle", "cx", at(x), "cy", at(y)));
    attributes.addAll(List.of("r", at(radius), "fill", fill));
    attributes.addAll(line);
    shape(attributes);
  }

  /** A shape of a drawing; what lies behind others is dashed. */
  void outline(Outline outline, String fill, double width, boolean hidden) {
    List<String> attributes = new ArrayList<>(List.of("path", "d", path(outline)));
    attributes.addAll(List.of("fill", fill, "fill-rule", "evenodd", "stroke-width", at(width)));
    if (hidden) {
      attributes.addAll(List.of("stroke-dasharray", "5 4"));
    }
    shape(attributes);
  }

  private static String path(Outline outline) {
    return outline.loops().stream()
        .map(
            loop ->
                loop.stream()
                    .map(point -> at(point.x()) + " " + at(point.y()))
                    .collect(Collectors.joining(" L ", "M ", outline.closed() ? " Z" : "")))
        .collect(Collectors.joining(" "));
  }

  /** An element, and its attributes, drawn in black. */
  private void shape(List<String> elementAndAttributes) {
    List<String> all = new ArrayList<>(elementAndAttributes);
    String element = all.remove(0);
    all.addAll(List.of("stroke", "black"));
    out.empty(element, all.toArray(String[]::new));
  }

  /** Where a line from a number ends. */
  void dot(double x, double y) {
    out.empty("circle", "cx", at(x), "cy", at(y), "r", "2");
  }

  /** A line of any shape, as SVG writes a path. */
  void path(String path, String fill, double width) {
    shape(List.of("path", "d", path, "fill", fill, "stroke-width", at(width)));
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
