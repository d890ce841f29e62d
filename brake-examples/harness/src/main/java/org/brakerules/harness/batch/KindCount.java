package org.brakerules.harness.batch;

import java.util.EnumMap;
import java.util.Map;
import org.brakerules.model.decision.Disposition;

/** How many parts of one kind came to which disposition, and how many stop work. */
final class KindCount {

  private final Map<Disposition, Long> dispositions = new EnumMap<>(Disposition.class);
  private long holds;

  void add(Disposition disposition, boolean hold) {
    add(disposition, 1);
    addHolds(hold ? 1 : 0);
  }

  void add(Disposition disposition, long more) {
    dispositions.merge(disposition, more, Long::sum);
  }

  void addHolds(long more) {
    holds += more;
  }

  void add(KindCount other) {
    for (Disposition disposition : Disposition.values()) {
      add(disposition, other.count(disposition));
    }
    addHolds(other.holds);
  }

  long count(Disposition disposition) {
    return dispositions.getOrDefault(disposition, 0L);
  }

  long holds() {
    return holds;
  }

  long total() {
    return dispositions.values().stream().mapToLong(Long::longValue).sum();
  }
}
