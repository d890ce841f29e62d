package org.brakerules.internal.fact;

import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.layout.AnchorPins;
import org.brakerules.model.layout.ArmKind;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.ClevisDesign;
import org.brakerules.model.layout.DrumMount;
import org.brakerules.model.layout.Fitted;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.LiningFastening;
import org.brakerules.model.layout.LiningPieces;
import org.brakerules.model.layout.ShoeWebs;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.WheelEndPath;

/**
 * How the brake of one wheel end is built.
 *
 * @param wheelEnd the wheel end
 * @param axleKind what its axle does
 * @param layout how the brake is built
 * @param scope how far it was taken apart
 * @param automaticAdjuster whether the vehicle must have automatic adjusters by the law of the job
 */
public record Brake(
    WheelEndPath wheelEnd,
    AxleKind axleKind,
    Layout layout,
    Scope scope,
    Fitted automaticAdjuster) {

  /** The wheel end across the axle. */
  public WheelEndPath partner() {
    return wheelEnd.partner();
  }

  /** How the camshaft is carried. */
  public CamshaftLayout camshaft() {
    return layout.camshaft();
  }

  /** The hand of shaft this wheel end takes. */
  public Hand camshaftHand() {
    return layout.camshaftHand();
  }

  /** How the anchor pins sit. */
  public AnchorPins anchorPins() {
    return layout.anchorPins();
  }

  /** How the drum is mounted. */
  public DrumMount drumMount() {
    return layout.drumMount();
  }

  /** The kind of slack adjuster. */
  public AdjusterKind adjuster() {
    return layout.adjuster();
  }

  /** How an automatic adjuster senses the stroke. */
  public ArmKind arm() {
    return layout.arm();
  }

  /** The design of the clevis. */
  public ClevisDesign clevis() {
    return layout.clevis();
  }

  /** The number of webs of a shoe. */
  public ShoeWebs webs() {
    return layout.webs();
  }

  /** One strip or two blocks. */
  public LiningPieces liningPieces() {
    return layout.liningPieces();
  }

  /** How the lining is held. */
  public LiningFastening liningFastening() {
    return layout.liningFastening();
  }

  /** Whether the chamber has a spring brake. */
  public Fitted springBrake() {
    return layout.springBrake();
  }

  /** Whether the wheel end has a wheel-speed sensor. */
  public Fitted sensor() {
    return layout.sensor();
  }
}
