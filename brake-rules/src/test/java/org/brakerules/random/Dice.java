package org.brakerules.random;

import java.util.List;
import java.util.Random;

/** The throws of one random job. */
public final class Dice {

  private final Random random;

  /** Dice that always fall the same way for a seed. */
  public Dice(long seed) {
    random = new Random(seed * 0x9E3779B97F4A7C15L);
  }

  /** Whether something happens that happens in so many of a hundred cases. */
  public boolean percent(int chance) {
    return random.nextInt(100) < chance;
  }

  /** A whole number from 0, below a bound. */
  public int below(int bound) {
    return random.nextInt(bound);
  }

  /** One of the entries of a list. */
  public <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  /** One of the constants of an enum. */
  public <E> E any(Class<E> type) {
    return any(List.of(type.getEnumConstants()));
  }

  /** One of the states of a list; the first is the usual one, so that parts of a brake agree. */
  Object state(Class<?> type, Mood mood) {
    return percent(mood.stated) && percent(70) ? type.getEnumConstants()[0] : any(type);
  }

  /** The dice themselves, to shuffle a list with. */
  public Random random() {
    return random;
  }
}
