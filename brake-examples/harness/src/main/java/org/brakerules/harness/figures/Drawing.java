package org.brakerules.harness.figures;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A drawing in black on white: lines, boxes and words. Its title and description say in words what
 * it shows, for whoever cannot see it.
 */
final class Drawing {

  static final int WIDTH = 800;

  private static final String SVG = "http://www.w3.org/2000/svg";

  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter out;

  Drawing(String title, String description, int height) throws XMLStreamException {
    out = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
    out.writeStartElement("svg");
    out.writeDefaultNamespace(SVG);
    out.writeAttribute("viewBox", "0 0 " + WIDTH + " " + height);
    out.writeAttribute("width", String.valueOf(WIDTH));
    out.writeAttribute("height", String.valueOf(height));
    out.writeAttribute("role", "img");
    out.writeAttribute("aria-labelledby", "title description");
    out.writeAttribute("font-family", "sans-serif");
    out.writeAttribute("font-size", "13");
    words("title", "title", title);
    words("desc", "description", description);
    box(0, 0, WIDTH, height, "white", "none");
    words(16, 26, title, "start", 16);
  }

  void words(int x, int y, String words, String anchor, int size) throws XMLStreamException {
    out.writeStartElement("text");
    out.writeAttribute("x", String.valueOf(x));
    out.writeAttribute("y", String.valueOf(y));
    out.writeAttribute("text-anchor", anchor);
    out.writeAttribute("font-size", String.valueOf(size));
    out.writeCharacters(words);
    out.writeEndElement();
  }

  void box(int x, int y, int width, int height, String fill, String stroke)
      throws XMLStreamException {
    out.writeEmptyElement("rect");
    out.writeAttribute("x", String.valueOf(x));
    out.writeAttribute("y", String.valueOf(y));
    out.writeAttribute("width", String.valueOf(width));
    out.writeAttribute("height", String.valueOf(height));
    out.writeAttribute("fill", fill);
    out.writeAttribute("stroke", stroke);
  }

  void line(int x1, int y1, int x2, int y2, String dashes) throws XMLStreamException {
    out.writeEmptyElement("line");
    out.writeAttribute("x1", String.valueOf(x1));
    out.writeAttribute("y1", String.valueOf(y1));
    out.writeAttribute("x2", String.valueOf(x2));
    out.writeAttribute("y2", String.valueOf(y2));
    out.writeAttribute("stroke", "black");
    if (!dashes.isEmpty()) {
      out.writeAttribute("stroke-dasharray", dashes);
    }
  }

  void dot(int x, int y, boolean filled) throws XMLStreamException {
    out.writeEmptyElement("circle");
    out.writeAttribute("cx", String.valueOf(x));
    out.writeAttribute("cy", String.valueOf(y));
    out.writeAttribute("r", "5");
    out.writeAttribute("fill", filled ? "black" : "white");
    out.writeAttribute("stroke", "black");
  }

  /** A mark that is neither filled nor round. */
  void square(int x, int y) throws XMLStreamException {
    box(x - 5, y - 5, 10, 10, "white", "black");
  }

  /** A short arrow along a row. */
  void arrow(int x, int y, boolean toTheRight) throws XMLStreamException {
    int forward = toTheRight ? 1 : -1;
    int head = x + 18 * forward;
    line(x, y, head, y, "");
    line(head, y, head - 4 * forward, y - 3, "");
    line(head, y, head - 4 * forward, y + 3, "");
  }

  /** Ends the drawing. */
  String finish() throws XMLStreamException {
    out.writeEndElement();
    out.close();
    return text + "\n";
  }

  private void words(String element, String id, String words) throws XMLStreamException {
    out.writeStartElement(element);
    out.writeAttribute("id", id);
    out.writeCharacters(words);
    out.writeEndElement();
  }
}
