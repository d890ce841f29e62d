package org.brakerules.calc.stroke;

import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * The stroke that presses the linings on the drum once they touch it. Long with a good free stroke
 * it speaks of flex or hidden looseness, which no adjustment cures.
 *
 * @param stroke the power stroke, above zero
 * @param working how it was worked out
 */
public record PowerStroke(Length stroke, Working working) {

  /**
   * The applied stroke less the free stroke.
   *
   * @param applied the push-rod stroke with the brake fully applied
   * @param free the push-rod stroke until the linings meet the drum
   * @throws IllegalArgumentException if the applied stroke is not the longer one
   */
  public static PowerStroke of(Length applied, Length free) {
    if (applied.compareTo(free) <= 0) {
      throw new IllegalArgumentException(
          "An applied stroke of "
              + applied
              + " is not longer than a free stroke of "
              + free
              + "; measure both again.");
    }
    Length power = applied.minus(free);
    return new PowerStroke(
        power,
        start(applied, free)
            .step(applied + " - " + free + " = " + power)
            .result("power stroke", power));
  }

  /** The work where an applied stroke is not longer than the free one. */
  public static Working contradicted(Length applied, Length free) {
    return start().contradicted("applied stroke", applied, "free stroke", free);
  }

  /** The same without a result, where something must be known first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  private static Working start(Length applied, Length free) {
    return start().given("applied stroke", applied).given("free stroke", free);
  }

  private static Working start() {
    return Working.of(
        "stroke.power",
        "Power stroke",
        "power stroke = applied stroke - free stroke",
        Basis.exact(Standing.COMMON_PRACTICE, "long with a good free stroke: flex or play"));
  }
}
