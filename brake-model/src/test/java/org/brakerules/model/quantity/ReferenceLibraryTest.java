package org.brakerules.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import java.util.function.Function;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Our conversions against those of the reference library of JSR 385. */
@DisplayName("Conversions agree with the reference library of JSR 385 (indriya, systems-common)")
class ReferenceLibraryTest {

  private static final long SEED = 811;
  private static final int VALUES = 1000;
  private static final BigDecimal RELATIVE_DIFFERENCE = new BigDecimal("1e-30");

  @Test
  void inches_to_millimetres() {
    agree(
        " in",
        text -> new BigDecimal(Length.parse(text).nanometres()).movePointLeft(6),
        USCustomary.INCH,
        MetricPrefix.MILLI(Units.METRE));
  }

  @Test
  void pounds_force_to_newtons() {
    agree(" lbf", text -> Force.parse(text).newtons(), Imperial.POUND_FORCE, Units.NEWTON);
  }

  @Test
  void pound_force_inches_to_newton_metres() {
    agree(
        " lbf.in",
        text -> Torque.parse(text).newtonMetres(),
        Imperial.POUND_FORCE.multiply(USCustomary.INCH),
        Units.NEWTON.multiply(Units.METRE));
  }

  @Test
  void pound_force_feet_to_newton_metres() {
    agree(
        " lbf.ft",
        text -> Torque.parse(text).newtonMetres(),
        Imperial.POUND_FORCE.multiply(USCustomary.FOOT),
        Units.NEWTON.multiply(Units.METRE));
  }

  @Test
  void psi_to_newtons_per_square_inch() {
    agree(
        " psi",
        text -> Pressure.parse(text).newtonsPerSquareInch(),
        Imperial.POUND_FORCE.divide(USCustomary.INCH.pow(2)),
        Units.NEWTON.divide(USCustomary.INCH.pow(2)));
  }

  @Test
  void kilopascals_to_newtons_per_square_inch() {
    agree(
        " kPa",
        text -> Pressure.parse(text).newtonsPerSquareInch(),
        MetricPrefix.KILO(Units.PASCAL),
        Units.NEWTON.divide(USCustomary.INCH.pow(2)));
  }

  @Test
  void turns_to_degrees() {
    agree(
        " turn",
        text -> new BigDecimal(Angle.parse(text).microdegrees()).movePointLeft(6),
        USCustomary.REVOLUTION,
        USCustomary.DEGREE_ANGLE);
  }

  private static void agree(
      String symbol,
      Function<String, BigDecimal> ours,
      javax.measure.Unit<?> from,
      javax.measure.Unit<?> to) {
    Random random = new Random(SEED);
    for (int i = 0; i < VALUES; i++) {
      BigDecimal number = BigDecimal.valueOf(1 + random.nextInt(100_000_000), 5);

      BigDecimal reference = converted(number, from, to);
      BigDecimal difference = ours.apply(number.toPlainString() + symbol).subtract(reference).abs();

      assertThat(difference)
          .as("%s%s, value %d of the random series %d", number, symbol, i, SEED)
          .isLessThanOrEqualTo(reference.multiply(RELATIVE_DIFFERENCE));
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static BigDecimal converted(
      BigDecimal number, javax.measure.Unit<?> from, javax.measure.Unit<?> to) {
    Number value =
        Quantities.getQuantity(number, (javax.measure.Unit) from)
            .to((javax.measure.Unit) to)
            .getValue();
    return new BigDecimal(value.toString());
  }
}
