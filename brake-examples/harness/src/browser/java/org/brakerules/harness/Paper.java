package org.brakerules.harness;

/** A size of paper, in inches. */
enum Paper {
  LETTER(8.5, 11),
  A4(210 / 25.4, 297 / 25.4);

  private static final double MARGINS = 12 / 25.4;
  private static final int PIXELS = 96;

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }

  /** How wide a page is between its margins, in the pixels of style sheets. */
  int pixels() {
    return (int) ((width - MARGINS) * PIXELS);
  }
}
