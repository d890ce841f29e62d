package org.brakerules.benchmark;

/**
 * Compares rule base and oracle on random jobs.
 *
 * <p>Arguments: the number of jobs, and the first seed. The exit code is 1 if anything differs.
 */
public final class CompareCommand {

  private static final int EXAMPLES_SHOWN = 10;

  private CompareCommand() {}

  /** Runs the comparison and prints what differs. */
  public static void main(String[] args) {
    int jobs = args.length > 0 ? Integer.parseInt(args[0]) : 2000;
    long firstSeed = args.length > 1 ? Long.parseLong(args[1]) : 1;
    Tally tally = Tally.of(jobs, firstSeed);
    System.out.println(tally.report(EXAMPLES_SHOWN));
    System.exit(tally.isAgreed() ? 0 : 1);
  }
}
