package org.brakerules.harness.changes;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.trial.provision.Provision;

/** Ids that were given to something else: old answers name them, so no changelog excuses it. */
final class UsedAgain {

  private static final String REMEDY = "; give the new one an id that was never used";

  private UsedAgain() {}

  static Stream<String> problems(Releases releases, Release now) {
    return now.provisions().values().stream()
        .flatMap(
            provision ->
                forSomethingElse(provision, releases)
                    .or(() -> cameBack(provision.id(), releases))
                    .stream());
  }

  private static Optional<String> forSomethingElse(Provision now, Releases releases) {
    for (Release release : releases.newestFirst()) {
      Provision before = release.provisions().get(now.id());
      if (before != null && !(before.kind() == now.kind() && before.of().equals(now.of()))) {
        return Optional.of(
            "`%s` is used again: in %s it was %s, now it is %s%s"
                .formatted(now.id(), release.version(), named(before), named(now), REMEDY));
      }
    }
    return Optional.empty();
  }

  private static String named(Provision provision) {
    String of = provision.of().isEmpty() ? "" : " of " + provision.of();
    return "a " + provision.kind().inWords() + of;
  }

  private static Optional<String> cameBack(String id, Releases releases) {
    List<Release> newestFirst = releases.newestFirst();
    if (newestFirst.get(0).provisions().containsKey(id)) {
      return Optional.empty();
    }
    return newestFirst.stream()
        .filter(release -> release.provisions().containsKey(id))
        .findFirst()
        .map(
            last ->
                "`%s` is used again: %s had it, %s no longer%s"
                    .formatted(
                        id,
                        last.version(),
                        newestFirst.get(newestFirst.indexOf(last) - 1).version(),
                        REMEDY));
  }
}
