package org.brakerules.internal.engine;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import org.brakerules.internal.fact.Replaced;
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
  private final Function<List<?>, FactSieve.Sifted> sieve;
  private final boolean keeps;
  private final ConcurrentLinkedQueue<StatefulKnowledgeSessionImpl> idle =
      new ConcurrentLinkedQueue<>();

  /**
   * Keeps sessions over a rule base.
   *
   * @param sieve which facts a session is told of
   */
  SessionPool(KieBase ruleBase, Function<List<?>, FactSieve.Sifted> sieve) {
    this(ruleBase, sieve, true);
  }

  /** A pool that makes a new session for every job is there to be measured. */
  SessionPool(KieBase ruleBase, Function<List<?>, FactSieve.Sifted> sieve, boolean keeps) {
    this.ruleBase = ruleBase;
    this.sieve = sieve;
    this.keeps = keeps;
  }

  List<Finding> fire(List<?> facts, Map<String, RuleText> texts, Predicate<String> speaks) {
    FactSieve.Sifted sifted = sieve.apply(facts);
    if (sifted.facts().isEmpty()) {
      return List.of();
    }
    return inSession(
        session -> {
          Listening listening = new Listening(texts, insertion(session, sifted), speaks);
          fire(session, listening, listening, sifted.facts());
          return listening.findings();
        });
  }

  /** On which facts each rule matches while those speak that may. */
  Map<String, Set<List<Object>>> matches(
      List<?> facts, Map<String, RuleText> texts, Predicate<String> speaks) {
    FactSieve.Sifted sifted = sieve.apply(facts);
    return inSession(
        session -> {
          Listening listening = new Listening(texts, insertion(session, sifted), speaks);
          Matches matches = new Matches(listening);
          fire(session, listening, matches, sifted.facts());
          return matches.found();
        });
  }

  private static Consumer<Replaced> insertion(
      StatefulKnowledgeSessionImpl session, FactSieve.Sifted sifted) {
    return marker -> {
      if (sifted.takes().test(marker)) {
        session.insert(marker);
      }
    };
  }

  private <T> T inSession(Function<StatefulKnowledgeSessionImpl, T> work) {
    StatefulKnowledgeSessionImpl session = take();
    boolean kept = false;
    try {
      T result = work.apply(session);
      if (keeps) {
        session.reset();
        kept = true;
      }
      return result;
    } finally {
      if (kept) {
        idle.offer(session);
      } else {
        session.dispose();
      }
    }
  }

  private StatefulKnowledgeSessionImpl take() {
    StatefulKnowledgeSessionImpl kept = idle.poll();
    return kept == null
        ? (StatefulKnowledgeSessionImpl) OwnClassLoader.with(ruleBase::newKieSession)
        : kept;
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
