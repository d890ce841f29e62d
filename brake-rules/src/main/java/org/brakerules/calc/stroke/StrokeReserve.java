package org.brakerules.calc.stroke;

import org.brakerules.calc.Basis;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * What is left of the full stroke of a chamber. At zero or below the push rod is at the end of its
 * travel and the brake gives no more force, however hard the pedal is pressed.
 *
 * @param cold what the applied stroke leaves of the full stroke
 * @param hot the same with a hot drum, which has grown
 * @param hotAndWorn the same with a hot drum and the linings worn before the next adjustment
 * @param working how it was worked out
 */
public record StrokeReserve(
    Length cold, Estimate<Length> hot, Estimate<Length> hotAndWorn, Working working) {

  /** What a very hot drum costs: 1/2 in. */
  public static final Length HOT_DRUM = Length.parse("0.5 in");

  /** What worn linings cost before the next adjustment: 1/4 in. */
  public static final Length LINING_WEAR = Length.parse("0.25 in");

  /**
   * The reserve of a measured stroke, with what the handbook takes for heat and wear.
   *
   * @param full the full stroke of the chamber, such as 2.5 in of a type 30
   * @param applied the applied stroke as measured, drum cold
   */
  public static StrokeReserve of(Length full, Length applied) {
    Length cold = full.minus(applied);
    Length hot = cold.minus(HOT_DRUM);
    Length worn = hot.minus(LINING_WEAR);
    Working working =
        start()
            .given("full stroke", full)
            .given("applied stroke", applied)
            .step("cold " + full + " - " + applied + " = " + cold)
            .step("hot " + cold + " - " + HOT_DRUM + " = " + hot)
            .step("hot and worn " + hot + " - " + LINING_WEAR + " = " + worn)
            .result("reserve, drum cold", cold)
            .result("reserve, drum hot", new Estimate<>(hot))
            .result("reserve, drum hot and linings worn", new Estimate<>(worn));
    if (worn.nanometres() <= 0) {
      working =
          working.result(
              "at nothing or below",
              "the push rod is at the end of its travel, with no force left");
    }
    return new StrokeReserve(cold, new Estimate<>(hot), new Estimate<>(worn), working);
  }

  /** The same without a result, where something must be known first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  /** The work of a stroke that is longer than the chamber lets it be. */
  public static Working contradicted(Length full, Length applied) {
    return start().contradicted("applied stroke", applied, "full stroke", full);
  }

  private static Working start() {
    return Working.of(
        "stroke.reserve",
        "Reserve of stroke",
        "reserve = full stroke - applied stroke; less "
            + HOT_DRUM
            + " for a hot drum; less "
            + LINING_WEAR
            + " for lining wear",
        Basis.estimate(Standing.GOVERNMENT, "a province's air brake handbook"));
  }
}
