package org.brakerules.figure;

import java.util.List;
import java.util.Optional;
import org.brakerules.calc.stroke.LostMotion;
import org.brakerules.model.decision.Check;
import org.brakerules.model.part.WheelEndPath;

/**
 * The figures of one wheel end.
 *
 * @param wheelEnd the wheel end
 * @param readings every reading that was held against a limit
 * @param lostMotion what each looseness costs in stroke; empty if the length of the arm or every
 *     play is missing
 * @param figures everything that was worked out, margins first
 */
public record WheelEndFigures(
    WheelEndPath wheelEnd,
    List<Check> readings,
    Optional<LostMotion> lostMotion,
    List<Figure> figures) {

  /** Keeps its own copies of the lists. */
  public WheelEndFigures {
    readings = List.copyOf(readings);
    figures = List.copyOf(figures);
  }
}
