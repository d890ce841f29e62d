package org.brakerules.harness;

import java.util.List;
import org.w3c.dom.Element;

/**
 * Words in a picture, with the room they take in letters as wide as those of Arial.
 *
 * @param words the words
 * @param left where they begin
 * @param top above the letters
 * @param right where they end
 * @param bottom below the letters
 */
record Label(String words, double left, double top, double right, double bottom) {

  /** All words of a picture; a number takes the room of its mark. */
  static List<Label> all(Element picture) {
    double letters = Double.parseDouble(picture.getAttribute("font-size"));
    return Svg.elements(picture, "text").map(text -> of(text, letters)).toList();
  }

  private static Label of(Element text, double letters) {
    String words = text.getTextContent();
    double x = Svg.number(text, "x");
    double y = Svg.number(text, "y");
    if (text.hasAttribute("fill")) {
      return new Label(words, x - 11, y - 16, x + 11, y + 6);
    }
    double width = words.chars().mapToDouble(Label::width).sum() * letters;
    double left =
        switch (text.getAttribute("text-anchor")) {
          case "middle" -> x - width / 2;
          case "end" -> x - width;
          default -> x;
        };
    return new Label(words, left, y - 0.72 * letters, left + width, y + 0.21 * letters);
  }

  private static double width(int letter) {
    if ("iljtf.,;:' I".indexOf(letter) >= 0) {
      return 0.28;
    }
    if ("mwMW".indexOf(letter) >= 0) {
      return 0.83;
    }
    return Character.isUpperCase(letter) ? 0.7 : 0.556;
  }

  boolean overlaps(Label other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  boolean lies(double width, double height) {
    return left >= 0 && top >= 0 && right <= width && bottom <= height;
  }

  /** Whether the edge of a box runs through the words. */
  boolean isCutBy(Element box) {
    double boxLeft = Svg.number(box, "x");
    double boxTop = Svg.number(box, "y");
    double boxRight = boxLeft + Svg.number(box, "width");
    double boxBottom = boxTop + Svg.number(box, "height");
    boolean meets = left < boxRight && boxLeft < right && top < boxBottom && boxTop < bottom;
    boolean within = left >= boxLeft && right <= boxRight && top >= boxTop && bottom <= boxBottom;
    return meets && !within;
  }
}
