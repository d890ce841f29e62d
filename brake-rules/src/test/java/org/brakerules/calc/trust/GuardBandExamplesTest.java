package org.brakerules.calc.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published examples of guard bands. Where our acceptance begins and ends is found by asking it;
 * how often parts are then accepted or refused wrongly is integrated by a numerical library. Check
 * cases C43 to C49: a public metrology repository, its manual and its tests, recomputed; JCGM
 * 106:2012 9.5.4 through the same.
 */
class GuardBandExamplesTest {

  private static final double NANOMETRES_PER_UNIT = 25_400_000;
  private static final int FAR = 12;

  /** C44: population N(9.5, 0.3), measured with u 0.1, limits 9 and 10. */
  @Test
  void simple_acceptance_accepts_and_refuses_wrongly_as_often_as_published() {
    NormalDistribution made = new NormalDistribution(9.5, 0.3);
    double low = lowest(9, 0);
    double high = highest(10, 0);
    assertThat(falseAccept(made, 0.1, 9, 10, low, high)).isCloseTo(0.0189422, within(1e-6));
    assertThat(falseReject(made, 0.1, 9, 10, low, high)).isCloseTo(0.0372078, within(1e-6));
    assertThat(1 - made.probability(9, 10)).isCloseTo(0.0955807, within(1e-6));
  }

  /** C44: a guard band of 0.0920660 lets one wrong part in two hundred through. */
  @Test
  void the_published_guard_band_keeps_the_published_risk() {
    NormalDistribution made = new NormalDistribution(9.5, 0.3);
    double low = lowest(9, 0.0920660);
    double high = highest(10, 0.0920660);
    assertThat(falseAccept(made, 0.1, 9, 10, low, high)).isCloseTo(0.005, within(1e-6));
  }

  /** C45: nine in ten good, tolerance over 2u three; acceptance at 1 and 0.9 of the tolerance. */
  @ParameterizedTest
  @CsvSource({"1, 0.0171415", "0.9, 0.0076132"})
  void a_smaller_acceptance_lets_fewer_wrong_parts_through(double factor, double risk) {
    NormalDistribution made = new NormalDistribution(0, 1 / quantile(0.90));
    double high = highest(1, 1 - factor);
    assertThat(falseAccept(made, 1.0 / 6, -1, 1, -high, high)).isCloseTo(risk, within(1e-6));
  }

  /** C46: spread of the parts four times that of the measurement; risk in per cent. */
  @ParameterizedTest
  @CsvSource({
    "0.60, 4.838603", "0.70, 3.922341", "0.80, 2.855830",
    "0.90, 1.599953", "0.95, 0.871009", "0.99, 0.199917",
  })
  void the_better_the_parts_the_fewer_are_accepted_wrongly(double good, double percent) {
    NormalDistribution made = new NormalDistribution(0, 1);
    double limit = quantile(good);
    double high = highest(limit, 0);
    double risk = falseAccept(made, 0.25, -limit, limit, -high, high);
    assertThat(100 * risk).isCloseTo(percent, within(2e-5));
  }

  /** C47: gamma(4, 0.25) against an upper limit of 1.75, measured with u 0.1. */
  @Test
  void a_lopsided_population_has_the_published_risk() {
    GammaDistribution made = new GammaDistribution(4, 0.25);
    double high = highest(1.75, 0);
    assertThat(falseAccept(made, 0.1, Double.NEGATIVE_INFINITY, 1.75, -FAR, high))
        .isCloseTo(0.0072389, within(1e-6));
  }

  /** C49: guard factors for a ratio of two, each turned into a guard band. */
  @ParameterizedTest(name = "factor {0}: accepted up to {0} of the tolerance")
  @CsvSource({"0.866025", "0.5", "0.75"})
  void a_guard_factor_is_a_guard_band_of_what_it_leaves(double factor) {
    assertThat(highest(1, 1 - factor)).isCloseTo(factor, within(1e-6));
  }

  /** C43: N(9.8, 0.1) against limits 9 and 10, the parts themselves. */
  @Test
  void the_library_gives_the_published_share_of_wrong_parts() {
    NormalDistribution made = new NormalDistribution(9.8, 0.1);
    assertThat(1 - made.probability(9, 10)).isCloseTo(0.0227501, within(1e-6));
  }

  /** Wrong parts whose measurement lies where we accept. */
  private static double falseAccept(
      RealDistribution made, double u, double lowLimit, double highLimit, double low, double high) {
    UnivariateFunction accepted =
        part -> made.density(part) * new NormalDistribution(part, u).probability(low, high);
    double above = integral(accepted, highLimit, highLimit + FAR * u);
    return Double.isInfinite(lowLimit)
        ? above
        : above + integral(accepted, lowLimit - FAR * u, lowLimit);
  }

  /** Good parts whose measurement lies where we do not accept. */
  private static double falseReject(
      RealDistribution made, double u, double lowLimit, double highLimit, double low, double high) {
    return integral(
        part -> made.density(part) * (1 - new NormalDistribution(part, u).probability(low, high)),
        lowLimit,
        highLimit);
  }

  private static double integral(UnivariateFunction function, double from, double to) {
    return new SimpsonIntegrator(1e-10, 1e-12, 5, 30).integrate(10_000_000, function, from, to);
  }

  /** The half width that holds this share of a standard normal population. */
  private static double quantile(double share) {
    return new NormalDistribution(0, 1).inverseCumulativeProbability((1 + share) / 2);
  }

  private static double highest(double limit, double guardBand) {
    return edge(limit, guardBand, Comparison.AT_MOST);
  }

  private static double lowest(double limit, double guardBand) {
    return edge(limit, guardBand, Comparison.AT_LEAST);
  }

  /** The reading at which acceptance ends, found by halving. */
  private static double edge(double limit, double guardBand, Comparison comparison) {
    long inside = comparison.isUpper() ? 0 : nanometres(limit + 1);
    long outside = nanometres(comparison.isUpper() ? limit + 1 : limit - 1);
    while (Math.abs(outside - inside) > 1) {
      long middle = (inside + outside) / 2;
      boolean accepted = status(middle, limit, guardBand, comparison) == CheckStatus.WITHIN;
      inside = accepted ? middle : inside;
      outside = accepted ? outside : middle;
    }
    return inside / NANOMETRES_PER_UNIT;
  }

  private static CheckStatus status(
      long reading, double limit, double guardBand, Comparison comparison) {
    Reading<Length> read =
        Reading.of(length(reading), Station.WHOLE_PART, Method.DIAL_INDICATOR)
            .plusOrMinus(length(nanometres(guardBand)));
    return ReadingAgainstLimit.status(read, comparison, length(nanometres(limit)));
  }

  private static long nanometres(double units) {
    return Math.round(units * NANOMETRES_PER_UNIT);
  }

  private static Length length(long nanometres) {
    return new Length(nanometres, LengthUnit.INCH);
  }
}
