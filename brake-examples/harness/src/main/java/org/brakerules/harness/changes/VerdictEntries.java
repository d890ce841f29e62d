package org.brakerules.harness.changes;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.harness.changelog.ChangelogEntry;
import org.brakerules.harness.changelog.ChangelogSection;

/** The entries under <b>Verdicts</b> that are not released yet. */
final class VerdictEntries {

  private static final String VERDICTS = "Verdicts";

  /**
   * Something that an entry leaves unsaid, or says so that it is not read.
   *
   * @param line the line of the entry
   * @param words what it is, and what to write
   */
  record Told(int line, String words) {}

  private final List<ChangelogEntry> written;
  private final NamedIds ids;
  private final Set<String> named;
  private final Set<String> different;

  private VerdictEntries(List<ChangelogEntry> written, NamedIds ids, Set<String> different) {
    this.written = written;
    this.ids = ids;
    this.different = different;
    this.named =
        written.stream()
            .flatMap(entry -> VerdictEntry.read(entry).ids().stream())
            .collect(Collectors.toUnmodifiableSet());
  }

  static VerdictEntries in(
      List<ChangelogSection> sections, NamedIds ids, List<Difference> differences) {
    return new VerdictEntries(
        sections.stream()
            .flatMap(section -> section.entries().stream())
            .filter(entry -> entry.heading().equals(VERDICTS))
            .toList(),
        ids,
        differences.stream().map(Difference::id).collect(Collectors.toUnmodifiableSet()));
  }

  /** How an entry is written. */
  static String form(String id) {
    return "- `" + id + "`, from YYYY-MM-DD, who sees another verdict: what and why";
  }

  /** The ids that entries begin with, in backticks. */
  Set<String> named() {
    return named;
  }

  /** The ids that an entry speaks of which does not begin with them, and that it should name. */
  Set<String> namedInProse() {
    return written.stream()
        .flatMap(entry -> namedInProse(entry).stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** What the entries leave unsaid. */
  Stream<Told> problems() {
    return written.stream()
        .flatMap(entry -> problems(entry).map(words -> new Told(entry.line(), words)));
  }

  private Stream<String> problems(ChangelogEntry entry) {
    VerdictEntry read = VerdictEntry.read(entry);
    if (read.ids().isEmpty()) {
      return namedInProse(entry).stream().map(VerdictEntries::prose);
    }
    List<String> misspelt = ids.problems(read);
    return misspelt.isEmpty() ? read.unsaid() : misspelt.stream();
  }

  private static String prose(String id) {
    return id + " is named in prose only, which is not read; begin the entry " + form(id);
  }

  /** Prose may speak of any id but one that differs, and that no other entry names. */
  private Set<String> namedInProse(ChangelogEntry entry) {
    Set<String> inProse = new LinkedHashSet<>();
    if (VerdictEntry.read(entry).ids().isEmpty()) {
      ids.in(entry.text()).stream()
          .filter(id -> isUnnamed(id) || entry.text().startsWith(id))
          .forEach(inProse::add);
    }
    return inProse;
  }

  private boolean isUnnamed(String id) {
    return different.contains(id) && !named.contains(id);
  }
}
