package org.brakerules.harness.changelog;

import java.util.ArrayList;
import java.util.List;

/** Reads the headings of a changelog and the entries below them. */
final class ChangelogReader {

  private static final String SECTION = "## ";
  private static final String HEADING = "**";
  private static final String ENTRY = "- ";

  private final List<String> lines;

  private ChangelogReader(List<String> lines) {
    this.lines = lines;
  }

  static List<ChangelogSection> sections(List<String> lines) {
    return new ChangelogReader(lines).sections();
  }

  private List<ChangelogSection> sections() {
    List<ChangelogSection> sections = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith(SECTION)) {
        String title = lines.get(i).substring(SECTION.length()).strip();
        sections.add(new ChangelogSection(i + 1, title, entries(i + 1)));
      }
    }
    return sections;
  }

  private List<ChangelogEntry> entries(int start) {
    List<ChangelogEntry> entries = new ArrayList<>();
    String heading = "";
    for (int i = start; i < lines.size() && !lines.get(i).startsWith(SECTION); i++) {
      String line = lines.get(i);
      if (line.startsWith(HEADING)) {
        heading = line.replace(HEADING, "").strip();
      } else if (line.startsWith(ENTRY)) {
        entries.add(new ChangelogEntry(i + 1, heading, entry(i)));
      }
    }
    return entries;
  }

  /** An entry without its dash, with the indented lines below it. */
  private String entry(int start) {
    StringBuilder entry = new StringBuilder(lines.get(start).substring(ENTRY.length()).strip());
    for (int i = start + 1; i < lines.size() && lines.get(i).startsWith("  "); i++) {
      entry.append(' ').append(lines.get(i).strip());
    }
    return entry.toString();
  }
}
