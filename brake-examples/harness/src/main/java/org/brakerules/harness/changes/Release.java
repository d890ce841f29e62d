package org.brakerules.harness.changes;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.brakerules.trial.provision.Provision;
import org.brakerules.trial.provision.Provisions;

/**
 * What the rule base laid down when it was released.
 *
 * @param version the version, such as {@code 0.1.0}
 * @param provisions its provisions by id
 */
record Release(String version, SortedMap<String, Provision> provisions) {

  /** Keeps its own copy. */
  Release {
    provisions = Collections.unmodifiableSortedMap(new TreeMap<>(provisions));
  }

  /** The rule base as it lies in a folder, not released yet. */
  static Release now(Path resources) throws IOException {
    return of("now", Provisions.in(resources));
  }

  static Release of(String version, Collection<Provision> provisions) {
    SortedMap<String, Provision> byId = new TreeMap<>();
    for (Provision provision : provisions) {
      if (byId.put(provision.id(), provision) != null) {
        throw new IllegalArgumentException("The id " + provision.id() + " is there twice.");
      }
    }
    return new Release(version, byId);
  }
}
