package org.brakerules.calc.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.brakerules.calc.Estimate;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Torque;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Pressure on an area, and a force on a lever, worked out by a library that knows no brakes. */
@DisplayName("Forces agree with the reference library of JSR 385 (indriya, systems-common)")
class ReferenceLibraryForceTest {

  private static final BigDecimal HALF_A_POUND_FORCE = new BigDecimal("2.3");
  private static final BigDecimal HALF_A_POUND_FORCE_INCH = new BigDecimal("0.06");

  @ParameterizedTest(name = "{0} psi on {1} in2, arm {2} in")
  @CsvSource({"60, 30, 5.5", "100, 24, 6", "85, 16, 5", "7.5, 36, 6.5"})
  void a_pressure_on_an_area_turns_an_arm(BigDecimal psi, BigDecimal area, BigDecimal arm) {
    Estimate<Force> force = PushRodForce.of(Pressure.parse(psi + " psi"), area).force();
    Torque torque =
        CamshaftTorque.of(force, Length.parse(arm + " in"), Angle.parse("90 deg")).torque().value();

    Quantity<?> expectedForce =
        Quantities.getQuantity(psi, Imperial.POUND_FORCE.divide(USCustomary.INCH.pow(2)))
            .multiply(Quantities.getQuantity(area, USCustomary.INCH.pow(2)));
    Quantity<?> expectedTorque =
        expectedForce.multiply(Quantities.getQuantity(arm, USCustomary.INCH));

    assertThat(force.value().newtons())
        .isCloseTo(in(expectedForce, Units.NEWTON), offset(HALF_A_POUND_FORCE));
    assertThat(torque.newtonMetres())
        .isCloseTo(
            in(expectedTorque, Units.NEWTON.multiply(Units.METRE)),
            offset(HALF_A_POUND_FORCE_INCH));
  }

  @SuppressWarnings({
    "unchecked",
    "rawtypes"
  }) // the library keeps the kind of quantity in its types
  private static BigDecimal in(Quantity quantity, Unit unit) {
    return new BigDecimal(quantity.to(unit).getValue().toString());
  }
}
