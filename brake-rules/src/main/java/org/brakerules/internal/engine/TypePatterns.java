package org.brakerules.internal.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.drools.model.SingleConstraint;
import org.drools.model.functions.Predicate1;

/**
 * The patterns of all rules over one type of fact, seen only by their conditions on the fact alone.
 * Patterns with the same conditions are one.
 */
final class TypePatterns {

  /** Each condition is a bit; what more there are is taken to hold, which sifts less. */
  private static final int MOST_CONDITIONS = Long.SIZE;

  private final List<String> texts = new ArrayList<>();
  private final List<Predicate1<Object>> conditions = new ArrayList<>();
  private int[] numbers = {};
  private long[] needs = {};

  /**
   * The number of the pattern with these conditions.
   *
   * @param next the number it gets if there is none yet
   */
  int number(List<SingleConstraint> alone, int next) {
    long need = 0;
    for (SingleConstraint condition : alone) {
      need |= bit(condition);
    }
    for (int i = 0; i < needs.length; i++) {
      if (needs[i] == need) {
        return numbers[i];
      }
    }
    int last = needs.length;
    needs = Arrays.copyOf(needs, last + 1);
    numbers = Arrays.copyOf(numbers, last + 1);
    needs[last] = need;
    numbers[last] = next;
    return next;
  }

  @SuppressWarnings("unchecked") // the engine hands it the same facts
  private long bit(SingleConstraint condition) {
    String text = Conditions.text(condition);
    int place = texts.indexOf(text);
    if (place < 0) {
      place = texts.size();
      if (place == MOST_CONDITIONS) {
        return 0;
      }
      texts.add(text);
      conditions.add((Predicate1<Object>) condition.getPredicate1());
    }
    return 1L << place;
  }

  /** The conditions that hold for a fact, a bit for each. */
  long held(Object fact) {
    long held = 0;
    for (int place = 0; place < conditions.size(); place++) {
      if (holds(place, fact)) {
        held |= 1L << place;
      }
    }
    return held;
  }

  private boolean holds(int place, Object fact) {
    try {
      return conditions.get(place).test(fact);
    } catch (Exception e) {
      throw new IllegalStateException("Cannot try " + texts.get(place), e);
    }
  }

  /** Marks the patterns that a fact of which so much holds can match. */
  void mark(long held, boolean[] met) {
    for (int i = 0; i < numbers.length; i++) {
      if (isMet(i, held)) {
        met[numbers[i]] = true;
      }
    }
  }

  /** Whether a fact of which so much holds can match any of the wanted patterns. */
  boolean isWanted(long held, boolean[] wanted) {
    for (int i = 0; i < numbers.length; i++) {
      if (isMet(i, held) && wanted[numbers[i]]) {
        return true;
      }
    }
    return false;
  }

  private boolean isMet(int place, long held) {
    return (held & needs[place]) == needs[place];
  }
}
