package org.brakerules.calc.stroke;

import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Source;
import org.brakerules.model.quantity.Length;

/**
 * How far a stroke is inside its limit.
 *
 * @param margin the limit less the stroke, below zero if the stroke is longer
 * @param passes whether the stroke passes; one at the limit does only if the limit says "at most"
 * @param working how it was worked out
 */
public record StrokeMargin(Length margin, boolean passes, Working working) {

  /**
   * Holds a stroke against a limit.
   *
   * @param stroke the stroke as measured
   * @param comparison the side of the limit on which a stroke passes
   * @param limit the limit
   * @param source where the limit comes from
   */
  public static StrokeMargin of(Length stroke, Comparison comparison, Length limit, Source source) {
    Length margin = limit.minus(stroke);
    Working working =
        Working.of(
                "stroke.margin",
                "Margin of the stroke",
                "margin = limit - stroke",
                Basis.exact(source.standing(), source.citation()))
            .given("stroke", stroke)
            .given("limit", comparison.inWords() + " " + limit)
            .step(limit + " - " + stroke + " = " + margin)
            .result("margin", margin);
    return new StrokeMargin(margin, comparison.passes(stroke, limit), working);
  }
}
