package org.brakerules.benchmark.result;

import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * A value with its error.
 *
 * @param value the mean of the rounds
 * @param error half the width of the interval that holds the true mean with 95 % confidence; 0
 *     where the value was counted, not timed
 */
public record Measured(double value, double error) {

  private static final double UPPER = 0.975;

  /** A value that was counted. */
  public static Measured counted(double value) {
    return new Measured(value, 0);
  }

  /**
   * The mean of some rounds.
   *
   * @throws IllegalArgumentException if there are fewer than two, which tell no error
   */
  public static Measured of(List<Double> rounds) {
    if (rounds.size() < 2) {
      throw new IllegalArgumentException("One round tells no error; there must be two at least.");
    }
    double mean = rounds.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double squares = rounds.stream().mapToDouble(one -> (one - mean) * (one - mean)).sum();
    double ofTheMean = Math.sqrt(squares / (rounds.size() - 1) / rounds.size());
    double factor = new TDistribution(rounds.size() - 1.0).inverseCumulativeProbability(UPPER);
    return new Measured(mean, factor * ofTheMean);
  }
}
