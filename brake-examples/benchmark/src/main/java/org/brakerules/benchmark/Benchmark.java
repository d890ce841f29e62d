package org.brakerules.benchmark;

/** Measures everything. */
public final class Benchmark {

  private Benchmark() {}

  /** Measures. */
  public static void main(String[] args) {}
}
