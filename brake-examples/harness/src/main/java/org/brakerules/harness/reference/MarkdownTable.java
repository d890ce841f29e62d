package org.brakerules.harness.reference;

import java.util.ArrayList;
import java.util.List;

/** A table in Markdown. */
final class MarkdownTable {

  private final List<List<String>> rows = new ArrayList<>();

  MarkdownTable(String... header) {
    rows.add(List.of(header));
  }

  void row(String... cells) {
    rows.add(List.of(cells));
  }

  boolean isEmpty() {
    return rows.size() == 1;
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(line(rows.get(0)));
    text.append("|").append(" --- |".repeat(rows.get(0).size())).append('\n');
    rows.subList(1, rows.size()).forEach(row -> text.append(line(row)));
    return text.toString();
  }

  private static String line(List<String> cells) {
    StringBuilder line = new StringBuilder("|");
    for (String cell : cells) {
      line.append(' ').append(cell.replace("|", "\\|")).append(" |");
    }
    return line.append('\n').toString();
  }
}
