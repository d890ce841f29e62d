package org.brakerules.harness.report;

import org.brakerules.harness.report.Palette.Ink;

/** Lines of text, wrapped at the width of the page. */
public final class Page {

  private static final int WIDTH = 100;

  private final Palette palette;
  private final StringBuilder text = new StringBuilder();

  /** Starts an empty page. */
  public Page(Palette palette) {
    this.palette = palette;
  }

  /** An empty page in the same colours. */
  Page another() {
    return new Page(palette);
  }

  /** Leaves a line free, unless one is free already. */
  public void gap() {
    if (!text.isEmpty() && !text.toString().endsWith("\n\n")) {
      text.append('\n');
    }
  }

  /** Writes a heading with a rule under it. */
  void underlined(String heading, Ink ink, char rule) {
    gap();
    text.append(palette.paint(heading, ink)).append('\n');
    text.append(String.valueOf(rule).repeat(heading.length())).append('\n');
  }

  /** Writes a line of its own. */
  void heading(int indent, String heading, Ink ink) {
    paragraph(indent, heading, 0, ink, "");
  }

  /** Writes a paragraph. */
  public void paragraph(int indent, String words) {
    paragraph(indent, "", 0, Ink.PLAIN, words);
  }

  /** Writes a paragraph behind a label; all its lines begin in the same column. */
  public void labelled(int indent, String label, int labelWidth, String words) {
    paragraph(indent, label, labelWidth, Ink.PLAIN, words);
  }

  void paragraph(int indent, String label, int labelWidth, Ink ink, String words) {
    int hanging = indent + labelWidth;
    text.append(" ".repeat(indent)).append(palette.paint(label, ink));
    int column = indent + label.length();
    // A label that is too long for its column keeps its first line to itself.
    boolean atStart = true;
    if (labelWidth > 0 && label.length() > labelWidth && !words.isEmpty()) {
      newLine(hanging);
      column = hanging;
    } else if (column < hanging) {
      text.append(words.isEmpty() ? "" : " ".repeat(hanging - column));
      column = hanging;
    }
    for (String word : words.isEmpty() ? new String[0] : words.split(" +")) {
      int width = word.codePointCount(0, word.length());
      if (!atStart && column + 1 + width > WIDTH) {
        newLine(hanging);
        column = hanging;
        atStart = true;
      }
      text.append(atStart ? "" : " ").append(word);
      column += width + (atStart ? 0 : 1);
      atStart = false;
    }
    text.append('\n');
  }

  /** Writes the lines of another page. */
  public void append(String lines) {
    text.append(lines);
  }

  private void newLine(int indent) {
    text.append('\n').append(" ".repeat(indent));
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
