package org.brakerules.internal.engine;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.kie.api.runtime.rule.AgendaFilter;
import org.kie.api.runtime.rule.Match;

/** Writes down on which facts each rule matched, whether it may speak or not. */
final class Matches implements AgendaFilter {

  private final AgendaFilter listening;
  private final Map<String, Set<List<Object>>> found = new HashMap<>();

  Matches(AgendaFilter listening) {
    this.listening = listening;
  }

  /** The facts of each match, by the name of the rule. */
  Map<String, Set<List<Object>>> found() {
    return found;
  }

  @Override
  public boolean accept(Match match) {
    found
        .computeIfAbsent(match.getRule().getName(), name -> new HashSet<>())
        .add(List.copyOf(match.getObjects()));
    return listening.accept(match);
  }
}
