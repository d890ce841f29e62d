package org.brakerules.internal.engine;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.jspecify.annotations.Nullable;

/**
 * Sessions for the first jobs over the rules at stake in them, and for all others over all rules.
 *
 * <p>The engine takes longer to put all rules together than to decide a job, and of hundreds of
 * rules a few dozen are at stake in one. Who decides one job does not wait for the others; who
 * decides many waits once.
 */
final class SessionsOnDemand {

  /** So many times one job may ask; a comparison asks twice, a record with its work three times. */
  private static final int FIRST = 4;

  /**
   * Sessions over some rules.
   *
   * @param rules their names
   */
  private record Some(Set<String> rules, SessionPool sessions) {}

  private final Supplier<List<Model>> models;
  private final Predicate<Rule> mayReplace;
  private @Nullable FactSieve sieve;
  private @Nullable Some some;
  private int asked;
  private volatile @Nullable SessionPool all;

  /**
   * Sessions over rules that are loaded when they are needed, and not kept.
   *
   * @param mayReplace whether the verdict of a rule may be that its part is replaced
   */
  SessionsOnDemand(Supplier<List<Model>> models, Predicate<Rule> mayReplace) {
    this.models = models;
    this.mayReplace = mayReplace;
  }

  /** Sessions over at least the rules at stake in these facts. */
  SessionPool over(List<?> facts) {
    SessionPool known = all;
    return known == null ? choose(facts) : known;
  }

  private synchronized SessionPool choose(List<?> facts) {
    SessionPool known = all;
    if (known != null) {
      return known;
    }
    asked++;
    Some made = some;
    if (made == null) {
      return ofFirst(facts);
    }
    return asked <= FIRST && made.rules().containsAll(sieve().atStake(facts))
        ? made.sessions()
        : ofAll();
  }

  private SessionPool ofFirst(List<?> facts) {
    List<Model> loaded = models.get();
    FactSieve made = FactSieve.of(loaded, mayReplace);
    Set<String> rules = made.atStake(facts);
    SessionPool sessions = sessions(loaded, made, rule -> rules.contains(rule.getName()));
    sieve = made;
    some = new Some(rules, sessions);
    return sessions;
  }

  private SessionPool ofAll() {
    SessionPool sessions = sessions(models.get(), sieve(), rule -> true);
    some = null;
    all = sessions;
    return sessions;
  }

  private FactSieve sieve() {
    FactSieve made = sieve;
    if (made == null) {
      throw new IllegalStateException("The first job makes the sieve.");
    }
    return made;
  }

  private static SessionPool sessions(List<Model> models, FactSieve sieve, Predicate<Rule> which) {
    List<Model> chosen = models.stream().<Model>map(model -> new InOrder(model, which)).toList();
    return new SessionPool(CompiledRules.ruleBase(chosen), sieve::sift);
  }
}
