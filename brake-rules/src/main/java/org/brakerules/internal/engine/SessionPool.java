package org.brakerules.internal.engine;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;
import java.util.function.Predicate;
import org.drools.kiesession.session.StatefulKnowledgeSessionImpl;
import org.kie.api.KieBase;
import org.kie.api.runtime.rule.AgendaFilter;

/**
 * Keeps sessions of the engine and clears them between jobs, because a new one costs more than a
 * job. A session serves one thread at a time; one whose job failed is thrown away.
 */
final class SessionPool {

  /** Far beyond what any job fires: reaching it means the rules do not come to rest. */
  private static final int MOST_FIRINGS = 100_000;

  private final KieBase ruleBase;
  private final ConcurrentLinkedQueue<StatefulKnowledgeSessionImpl> idle =
      new ConcurrentLinkedQueue<>();

  SessionPool(KieBase ruleBase) {
    this.ruleBase = ruleBase;
  }

  List<Finding> fire(Collection<?> facts, Map<String, RuleText> texts, Predicate<String> speaks) {
    return inSession(
        session -> {
          Listening listening = new Listening(texts, session::insert, speaks);
          fire(session, listening, listening, facts);
          return listening.findings();
        });
  }

  /** On which facts each rule matches while those speak that may. */
  Map<String, Set<List<Object>>> matches(
      Collection<?> facts, Map<String, RuleText> texts, Predicate<String> speaks) {
    return inSession(
        session -> {
          Listening listening = new Listening(texts, session::insert, speaks);
          Matches matches = new Matches(listening);
          fire(session, listening, matches, facts);
          return matches.found();
        });
  }

  private <T> T inSession(Function<StatefulKnowledgeSessionImpl, T> work) {
    StatefulKnowledgeSessionImpl session = take();
    boolean sound = false;
    try {
      T result = work.apply(session);
      session.reset();
      sound = true;
      return result;
    } finally {
      if (sound) {
        idle.offer(session);
      } else {
        session.dispose();
      }
    }
  }

  private StatefulKnowledgeSessionImpl take() {
    StatefulKnowledgeSessionImpl kept = idle.poll();
    return kept == null ? (StatefulKnowledgeSessionImpl) ruleBase.newKieSession() : kept;
  }

  private static void fire(
      StatefulKnowledgeSessionImpl session,
      Listening listening,
      AgendaFilter filter,
      Collection<?> facts) {
    session.setGlobal("verdict", listening.verdicts());
    facts.forEach(session::insert);
    if (session.fireAllRules(filter, MOST_FIRINGS) >= MOST_FIRINGS) {
      throw new IllegalStateException("The rules do not come to rest.");
    }
  }
}
