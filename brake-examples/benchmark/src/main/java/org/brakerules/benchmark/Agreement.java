package org.brakerules.benchmark;

import java.io.PrintStream;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Command line: rule base and oracle decide the same random jobs, and every answer is compared.
 *
 * <p>Ends with 0 if they agree on all, 1 if not, 2 if it was called wrongly.
 */
public final class Agreement {

  private static final String USAGE =
      """
      Usage: Agreement [--jobs N] [--first SEED] [--threads T] [--examples K]
      Rule base and oracle decide random jobs; for every part disposition, hold, reasons, checks and
      open points are compared.
        --jobs N      how many jobs, from 1 to 1000000000 (10000)
        --first SEED  the seed of the first (1)
        --threads T   on how many threads, from 1 to 64 (1)
        --examples K  how many kinds of disagreement to show on their smallest job (5)
      Exit code: 0 agreed, 1 not agreed, 2 wrong usage.""";

  private static final long PROGRESS_NANOS = 10_000_000_000L;

  /**
   * What a comparison came to.
   *
   * @param jobs the jobs compared
   * @param decisions the parts of these jobs
   * @param disagreements the parts on which the two answers differ
   */
  public record Outcome(long jobs, long decisions, long disagreements) {}

  private final PrintStream out;
  private final PrintStream err;

  private Agreement(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  /** Runs the comparison and ends the process with its exit code. */
  public static void main(String[] args) {
    System.exit(run(System.out, System.err, args));
  }

  /** Compares the answers to the random jobs from the first seed on. */
  public static Outcome of(long jobs, int threads) {
    return new Run(1, jobs, done -> {}).on(threads).outcome();
  }

  /** Runs the comparison and gives its exit code. */
  static int run(PrintStream out, PrintStream err, String... args) {
    return new Agreement(out, err).run(args);
  }

  private int run(String... args) {
    Map<String, Long> options =
        new TreeMap<>(Map.of("--jobs", 10_000L, "--first", 1L, "--threads", 1L, "--examples", 5L));
    if (args.length == 1 && args[0].equals("--help")) {
      out.println(USAGE);
      return 0;
    }
    Optional<String> mistake = read(args, options);
    if (mistake.isPresent()) {
      err.println(mistake.get());
      err.println(USAGE);
      return 2;
    }
    long jobs = value(options, "--jobs");
    Run run = new Run(value(options, "--first"), jobs, progress(jobs)::hear);
    Tally tally = run.on(Math.toIntExact(value(options, "--threads")));
    out.println(tally.report(Math.toIntExact(value(options, "--examples"))));
    return tally.isAgreed() ? 0 : 1;
  }

  /** Reads the options into the map; gives what is wrong with them. */
  private static Optional<String> read(String[] args, Map<String, Long> options) {
    for (int i = 0; i < args.length; i += 2) {
      if (!options.containsKey(args[i])) {
        return Optional.of("\"" + args[i] + "\" is no option.");
      }
      if (i + 1 == args.length || !args[i + 1].matches("-?[0-9]{1,10}")) {
        return Optional.of("Write a whole number of at most ten digits after " + args[i] + ".");
      }
      options.put(args[i], Long.parseLong(args[i + 1]));
    }
    return outside(options, "--jobs", 1, 1_000_000_000)
        .or(() -> outside(options, "--threads", 1, 64))
        .or(() -> outside(options, "--examples", 0, 100));
  }

  private static long value(Map<String, Long> options, String name) {
    return options.getOrDefault(name, 0L);
  }

  private static Optional<String> outside(
      Map<String, Long> options, String name, long least, long most) {
    long value = value(options, name);
    return value < least || value > most
        ? Optional.of(
            name + " is " + value + "; write a number from " + least + " to " + most + ".")
        : Optional.empty();
  }

  private Progress progress(long jobs) {
    return new Progress(err, jobs, System.nanoTime());
  }

  /** Says every ten seconds how far it is. */
  private record Progress(PrintStream err, long jobs, long started, AtomicLong next) {

    Progress(PrintStream err, long jobs, long started) {
      this(err, jobs, started, new AtomicLong(started + PROGRESS_NANOS));
    }

    void hear(long done) {
      long now = System.nanoTime();
      long due = next.get();
      if (now - due > 0 && next.compareAndSet(due, now + PROGRESS_NANOS)) {
        err.printf(
            "%d of %d jobs, %d a second%n",
            done, jobs, done * 1_000_000_000L / Math.max(1, now - started));
      }
    }
  }
}
