package org.brakerules.random;

import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.stream.LongStream;

/**
 * Runs a test over many random jobs and names the seed of the one that failed.
 *
 * <p>The first seed is fixed, so that a build repeats itself. Another one is given by {@code
 * -Dbrakerules.seed=1}.
 */
public final class Seeds {

  private static final long FIRST = Long.getLong("brakerules.seed", 20_261_120L);

  private Seeds() {}

  /** Tries as many seeds as wanted, on all cores; the lowest that fails is named. */
  public static void each(int count, LongConsumer test) {
    LongStream.range(FIRST, FIRST + count)
        .parallel()
        .mapToObj(seed -> failure(seed, test))
        .flatMap(Optional::stream)
        .findFirst()
        .ifPresent(
            failed -> {
              throw failed;
            });
  }

  private static Optional<AssertionError> failure(long seed, LongConsumer test) {
    try {
      test.accept(seed);
      return Optional.empty();
    } catch (AssertionError | RuntimeException e) {
      String message = "Random job with seed " + seed + ": " + e.getMessage();
      return Optional.of(new AssertionError(message, e));
    }
  }

  /** The seed of the job of this rank, counted from 0. */
  public static long at(int rank) {
    return FIRST + rank;
  }
}
