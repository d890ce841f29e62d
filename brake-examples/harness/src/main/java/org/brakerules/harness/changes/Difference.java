package org.brakerules.harness.changes;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.brakerules.trial.provision.Provision;
import org.brakerules.trial.provision.Provision.Kind;

/**
 * A provision that is not what it was in the last release.
 *
 * @param before what it was; empty if it was added
 * @param after what it is; empty if it was removed
 */
record Difference(Optional<Provision> before, Optional<Provision> after) {

  /** The differences in the order of their ids. A new source alone changes no verdict. */
  static List<Difference> between(Release last, Release now) {
    TreeSet<String> ids = new TreeSet<>(last.provisions().keySet());
    ids.addAll(now.provisions().keySet());
    return ids.stream()
        .map(id -> new Difference(find(last.provisions(), id), find(now.provisions(), id)))
        .filter(difference -> !difference.decidesAlike())
        .filter(difference -> difference.before().isPresent() || difference.kind() != Kind.SOURCE)
        .toList();
  }

  private static Optional<Provision> find(SortedMap<String, Provision> provisions, String id) {
    return Optional.ofNullable(provisions.get(id));
  }

  private boolean decidesAlike() {
    return before.isPresent() && after.isPresent() && before.get().decidesLike(after.get());
  }

  String id() {
    return either().id();
  }

  Kind kind() {
    return either().kind();
  }

  private Provision either() {
    return after.or(() -> before).orElseThrow();
  }

  /** What happened, in one word. */
  String inWords() {
    if (before.isEmpty()) {
      return "added";
    }
    return after.isEmpty() ? "removed" : "changed";
  }

  /** The lines that went, then those that came. */
  Stream<String> lines() {
    List<String> old = before.map(Provision::lines).orElse(List.of());
    List<String> young = after.map(Provision::lines).orElse(List.of());
    return Stream.concat(
        old.stream().filter(line -> !young.contains(line)).map(line -> "- " + line),
        young.stream().filter(line -> !old.contains(line)).map(line -> "+ " + line));
  }
}
