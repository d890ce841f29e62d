package org.brakerules.internal.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.part.Scope;

/** The cautions, each with the scope from which on it is due. */
public final class CautionTable {

  private record Entry(Scope from, Caution caution) {}

  private final List<Entry> entries = new ArrayList<>();
  private final Map<Scope, List<Caution>> due = new ConcurrentHashMap<>();

  CautionTable(Iterable<Row> rows, SourceTable sources) {
    for (Row row : rows) {
      Scope from =
          row.known(
              row.required("from"),
              "scope",
              name -> Names.find(Scope.class, name),
              Names.all(Scope.class));
      Caution caution =
          new Caution(
              row.required("id"),
              row.required("text"),
              row.list("source").stream()
                  .map(citation -> LimitTable.source(row, citation, sources))
                  .toList());
      entries.add(new Entry(from, caution));
    }
  }

  /** The ids of all cautions. */
  public List<String> ids() {
    return entries.stream().map(entry -> entry.caution().id()).toList();
  }

  /** Finds a caution by its id. */
  public Optional<Caution> find(String id) {
    return entries.stream()
        .map(Entry::caution)
        .filter(caution -> caution.id().equals(id))
        .findFirst();
  }

  /** The cautions for work of this scope. */
  public List<Caution> due(Scope scope) {
    return due.computeIfAbsent(
        scope,
        one ->
            entries.stream()
                .filter(entry -> one.reaches(entry.from()))
                .map(Entry::caution)
                .toList());
  }
}
