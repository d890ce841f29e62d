package org.brakerules.benchmark.run;

/** Does nothing: what a Java run time costs by itself. */
final class Bare {

  private Bare() {}

  /** Does nothing. */
  public static void main(String[] args) {}
}
