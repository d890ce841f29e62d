package org.brakerules.internal.engine;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.drools.kiesession.session.StatefulKnowledgeSessionImpl;
import org.kie.api.KieBase;

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

  List<Finding> fire(Collection<?> facts, Map<String, RuleText> texts) {
    StatefulKnowledgeSessionImpl session = take();
    boolean sound = false;
    try {
      List<Finding> findings = fire(session, facts, texts);
      session.reset();
      sound = true;
      return findings;
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

  private static List<Finding> fire(
      StatefulKnowledgeSessionImpl session, Collection<?> facts, Map<String, RuleText> texts) {
    Listening listening = new Listening(texts, session::insert);
    session.setGlobal("verdict", listening.verdicts());
    facts.forEach(session::insert);
    if (session.fireAllRules(listening, MOST_FIRINGS) >= MOST_FIRINGS) {
      throw new IllegalStateException("The rules do not come to rest.");
    }
    return listening.findings();
  }
}
