package org.brakerules.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.part.PartKind;
import org.brakerules.parts.Detail;

/**
 * What is asked for of the new parts of one axle instead of what was found. It holds for both ends:
 * of two that are unlike, nobody knows yet which is the right one.
 *
 * @param entries the rows that follow
 */
record AskedFor(List<AskedForTable.Entry> entries) {

  /** The details of a part with those put right that were rejected. */
  List<Detail> in(PartKind kind, List<Detail> asFound) {
    List<Detail> all = new ArrayList<>();
    for (Detail detail : asFound) {
      all.add(of(kind, detail.name()).orElse(detail));
    }
    entries.stream()
        .filter(entry -> entry.part() == kind)
        .map(AskedForTable.Entry::detail)
        .filter(asked -> all.stream().noneMatch(one -> one.name().equals(asked.name())))
        .forEach(asked -> all.add(all.size() - 1, asked));
    return all;
  }

  private Optional<Detail> of(PartKind kind, String name) {
    return entries.stream()
        .filter(entry -> entry.part() == kind && entry.detail().name().equals(name))
        .map(AskedForTable.Entry::detail)
        .findFirst();
  }
}
