package org.brakerules.harness.changes;

import java.util.ArrayList;
import java.util.List;

/** Reads the headings of a changelog and its entries under <b>Verdicts</b>. */
final class ChangelogReader {

  private static final String SECTION = "## ";
  private static final String HEADING = "**";
  private static final String VERDICTS = "**Verdicts**";
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
        String version = lines.get(i).substring(SECTION.length()).strip().split(" ", 2)[0];
        sections.add(new ChangelogSection(i + 1, version, verdicts(i + 1)));
      }
    }
    return sections;
  }

  private List<VerdictEntry> verdicts(int start) {
    List<VerdictEntry> entries = new ArrayList<>();
    boolean ofVerdicts = false;
    for (int i = start; i < lines.size() && !lines.get(i).startsWith(SECTION); i++) {
      String line = lines.get(i);
      if (line.startsWith(HEADING)) {
        ofVerdicts = line.strip().equals(VERDICTS);
      } else if (ofVerdicts && line.startsWith(ENTRY)) {
        entries.add(VerdictEntry.read(i + 1, entry(i)));
      }
    }
    return entries.stream().filter(entry -> !entry.ids().isEmpty()).toList();
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
