package org.brakerules.harness.sheet;

import java.util.stream.Collectors;
import org.brakerules.calc.Working;
import org.brakerules.harness.html.Markup;

/** The stack at the adjuster end of the camshaft, and what to do with its shims. */
final class EndPlayPicture {

  private static final int WIDTH = 590;
  private static final int HEIGHT = 176;
  private static final int LETTERS = 17;

  private final Working shims;

  /**
   * Looks at one stack.
   *
   * @param shims how its shims were worked out
   */
  EndPlayPicture(Working shims) {
    this.shims = shims;
  }

  void draw(Markup page, String id) {
    Picture picture =
        new Picture(
            page, id, "The stack that sets the end play", inWords(), WIDTH, HEIGHT, LETTERS);
    picture.box(40, 70, 540, 40, "white");
    for (int y = 76; y < 110; y += 7) {
      picture.line(336, y, 580, y, 1);
    }
    piece(picture, 60, 120, 40, "bracket", "silver");
    piece(picture, 192, 22, 34, "", "white");
    picture.words(203, 44, "spacer", "middle");
    piece(picture, 236, 100, 64, "adjuster", "white");
    piece(picture, 346, 14, 34, "", "white");
    picture.words(353, 18, "washer", "middle");
    picture.line(353, 22, 353, 54, 1);
    for (int x = 372; x < 402; x += 12) {
      picture.box(x, 50, 6, 80, "black");
    }
    picture.words(400, 40, "shims", "middle");
    gap(picture);
    picture.box(470, 58, 10, 64, "gray");
    picture.words(476, 40, "ring", "middle");
    picture.finish();
    page.element("p", results(), "class", "note");
  }

  private static void piece(Picture picture, int x, int width, int half, String name, String fill) {
    picture.box(x, 90 - half, width, 2 * half, fill);
    if (!name.isEmpty()) {
      picture.words(x + width / 2.0, 90 + half + 16, name, "middle");
    }
  }

  /** The play is the gap between the stack and the ring when the shaft is pushed home. */
  private static void gap(Picture picture) {
    picture.line(402, 132, 402, 152, 1);
    picture.line(470, 124, 470, 152, 1);
    picture.arrow(437, 144, 403, 144);
    picture.arrow(437, 144, 469, 144);
    picture.words(437, 166, "end play", "middle");
  }

  private String results() {
    String missing = String.join("; ", shims.missing());
    if (shims.results().isEmpty()) {
      return "Not worked out; to be known first: " + missing + ".";
    }
    String worked =
        shims.results().stream()
            .map(one -> one.name() + " " + one.value())
            .collect(Collectors.joining("; ", "", "."));
    return missing.isEmpty()
        ? worked
        : "Estimate only: " + worked + " To be known: " + missing + ".";
  }

  private String inWords() {
    return "From the bracket outward: spacer, adjuster, washer, shims, gap, ring. " + results();
  }
}
