package org.brakerules.harness.batch;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.harness.batch.CompactDecision.Part;
import org.brakerules.harness.batch.CompactDecision.Reason;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.part.PartKind;

/** What many decisions come to, in numbers. Each thread counts on its own; then they are added. */
final class Tally {

  private final Map<Count, Long> counts = new EnumMap<>(Count.class);
  private final Map<Reject.Kind, Long> rejects = new EnumMap<>(Reject.Kind.class);
  private final Map<PartKind, KindCount> kinds = new EnumMap<>(PartKind.class);
  private final Map<String, Long> reasons = new HashMap<>();

  /** What is counted of jobs. */
  enum Count {
    /** Jobs that were decided. */
    JOBS("jobs"),
    /** Of these, jobs in which every part is decided and none stops work. */
    COMPLETE("complete"),
    /** Of these, jobs in which something stops work. */
    ON_HOLD("onHold");

    private final String field;

    Count(String field) {
      this.field = field;
    }

    /** Its name in JSON. */
    String field() {
      return field;
    }
  }

  /** Counts a decision. */
  void add(CompactDecision decision) {
    add(Count.JOBS, 1);
    add(Count.COMPLETE, decision.complete() ? 1 : 0);
    add(Count.ON_HOLD, decision.parts().stream().anyMatch(Part::hold) ? 1 : 0);
    for (Part part : decision.parts()) {
      kind(part.part().kind()).add(part.disposition(), part.hold());
      for (Reason reason : part.reasons()) {
        addReason(reason.rule(), 1);
      }
    }
  }

  void add(Reject.Kind reject, long more) {
    rejects.merge(reject, more, Long::sum);
  }

  void add(Count what, long more) {
    counts.merge(what, more, Long::sum);
  }

  void addReason(String rule, long more) {
    reasons.merge(rule, more, Long::sum);
  }

  /** Adds what another thread has counted. */
  void add(Tally other) {
    other.counts.forEach(this::add);
    other.rejects.forEach(this::add);
    other.kinds.forEach((kind, count) -> kind(kind).add(count));
    other.reasons.forEach(this::addReason);
  }

  KindCount kind(PartKind kind) {
    return kinds.computeIfAbsent(kind, any -> new KindCount());
  }

  /** The kinds of parts that were decided, in the order of the reports. */
  Map<PartKind, KindCount> kinds() {
    return Collections.unmodifiableMap(kinds);
  }

  /** All parts together. */
  KindCount parts() {
    KindCount all = new KindCount();
    kinds.values().forEach(all::add);
    return all;
  }

  long count(Count what) {
    return counts.getOrDefault(what, 0L);
  }

  long count(Reject.Kind kind) {
    return rejects.getOrDefault(kind, 0L);
  }

  /** All lines without a decision. */
  long rejects() {
    return rejects.values().stream().mapToLong(Long::longValue).sum();
  }

  long count(Disposition disposition) {
    return parts().count(disposition);
  }

  /** How many parts each rule spoke of; the most frequent first. */
  List<Map.Entry<String, Long>> reasons() {
    List<Map.Entry<String, Long>> all = new ArrayList<>(reasons.entrySet());
    all.sort(
        Map.Entry.<String, Long>comparingByValue()
            .reversed()
            .thenComparing(Map.Entry.comparingByKey(Comparator.naturalOrder())));
    return all;
  }
}
