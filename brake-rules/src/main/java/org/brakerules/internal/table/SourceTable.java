package org.brakerules.internal.table;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.job.RuleSet;

/** Every source a rule, limit or caution may cite. */
public final class SourceTable {

  private record Entry(String title, Standing standing, Optional<RuleSet> ruleSet) {}

  private final Map<String, Entry> entries = new LinkedHashMap<>();

  SourceTable(Iterable<Row> rows) {
    for (Row row : rows) {
      Standing standing =
          row.known(
              row.required("standing"),
              "standing",
              name -> Names.find(Standing.class, name),
              Names.all(Standing.class));
      Optional<RuleSet> ruleSet = row.optional("rule-set").map(RuleSet::new);
      Entry entry = new Entry(row.required("title"), standing, ruleSet);
      if (entries.put(row.required("id"), entry) != null) {
        throw row.mistake("source \"" + row.required("id") + "\" is there twice");
      }
    }
  }

  /** The ids of all sources. */
  public Collection<String> ids() {
    return entries.keySet();
  }

  /** Finds the source behind a citation such as {@code US-ARMY-TM-5-4210-220-12#4-30.4}. */
  public Optional<Source> find(String citation) {
    int hash = citation.indexOf('#');
    String id = hash < 0 ? citation : citation.substring(0, hash);
    String clause = hash < 0 ? "" : citation.substring(hash + 1);
    return Optional.ofNullable(entries.get(id))
        .map(entry -> new Source(id, clause, entry.title(), entry.standing()));
  }

  /** Sources as they stand under a rule set: there, a law of another place is no law. */
  public List<Source> under(RuleSet ruleSet, List<Source> sources) {
    for (Source source : sources) {
      if (isLawElsewhere(source, ruleSet)) {
        return sources.stream().map(one -> under(ruleSet, one)).toList();
      }
    }
    return sources;
  }

  private boolean isLawElsewhere(Source source, RuleSet ruleSet) {
    return source.standing() == Standing.LAW && !isLawOf(source, ruleSet);
  }

  private Source under(RuleSet ruleSet, Source source) {
    return isLawElsewhere(source, ruleSet)
        ? new Source(source.id(), source.clause(), source.title(), Standing.LAW_ELSEWHERE)
        : source;
  }

  /** Whether a source is a law of this rule set. */
  public boolean isLawOf(Source source, RuleSet ruleSet) {
    return source.standing() == Standing.LAW && lawOf(source).filter(ruleSet::equals).isPresent();
  }

  /** The rule set whose law a source is; empty if it is no law of any rule set known here. */
  public Optional<RuleSet> lawOf(Source source) {
    return Optional.ofNullable(entries.get(source.id())).flatMap(Entry::ruleSet);
  }
}
