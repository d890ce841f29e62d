package org.brakerules.model.layout;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.part.AtMost;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;

/**
 * How the brake of one wheel end is built. What is not stated is unknown, never a default: where a
 * rule depends on it, the part stays undecided.
 *
 * @param camshaft how the camshaft is carried
 * @param camshaftHand the hand of shaft this wheel end takes, as its maker says
 * @param anchorPins how the anchor pins sit
 * @param drumMount how the drum is mounted
 * @param adjuster the kind of slack adjuster
 * @param arm how an automatic adjuster senses the stroke
 * @param clevis the design of the clevis
 * @param webs the number of webs of a shoe
 * @param liningPieces one strip or two blocks
 * @param liningFastening how the lining is held
 * @param chamber the size of the chamber
 * @param drumDiameter the nominal inside diameter of the drum, such as {@code 16.5 in}; empty if
 *     not stated
 * @param springBrake whether the chamber has a spring brake
 * @param sensor whether the wheel end has a wheel-speed sensor
 */
@RecordBuilder
@RecordBuilder.Options(enableWither = false)
public record Layout(
    CamshaftLayout camshaft,
    Hand camshaftHand,
    AnchorPins anchorPins,
    DrumMount drumMount,
    AdjusterKind adjuster,
    ArmKind arm,
    ClevisDesign clevis,
    ShoeWebs webs,
    LiningPieces liningPieces,
    LiningFastening liningFastening,
    ChamberSize chamber,
    @AtMost("40 in") Optional<Length> drumDiameter,
    Fitted springBrake,
    Fitted sensor) {

  /** A brake of which nothing is stated. */
  public static final Layout UNKNOWN =
      new Layout(
          CamshaftLayout.UNKNOWN,
          Hand.UNKNOWN,
          AnchorPins.UNKNOWN,
          DrumMount.UNKNOWN,
          AdjusterKind.UNKNOWN,
          ArmKind.UNKNOWN,
          ClevisDesign.UNKNOWN,
          ShoeWebs.UNKNOWN,
          LiningPieces.UNKNOWN,
          LiningFastening.UNKNOWN,
          ChamberSize.UNKNOWN,
          Optional.empty(),
          Fitted.UNKNOWN,
          Fitted.UNKNOWN);

  /** Starts the layout of a brake whose camshaft is carried as given. */
  public static LayoutBuilder of(CamshaftLayout camshaft) {
    return LayoutBuilder.builder(UNKNOWN).camshaft(camshaft);
  }

  /**
   * The places of all parts that a brake of this layout has for certain and that the scope lays
   * open, in path order.
   */
  public List<Place> expectedParts(WheelEndPath wheelEnd, Scope scope) {
    return ExpectedParts.of(this, wheelEnd, scope);
  }
}
