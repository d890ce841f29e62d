package org.brakerules.model.job;

/** A size that is stated for the figures of a job. No limit is held against it. */
public enum Size {
  /** The bore of a new camshaft bushing, fitted and reamed. */
  NEW_BUSHING_BORE,
  /** The journal of a new camshaft. */
  NEW_JOURNAL,
  /** Play of the camshaft in a bushing straight up and down. */
  PLAY_UP_AND_DOWN,
  /** The same between up in front and down behind. */
  PLAY_UP_IN_FRONT,
  /** The same straight to the front and to the rear. */
  PLAY_FRONT_TO_REAR,
  /** The same between down in front and up behind. */
  PLAY_DOWN_IN_FRONT,
  /** The hole a clevis pin sits in, where it is widest. */
  CLEVIS_PIN_HOLE,
  /** The widest such a hole is when new. */
  WIDEST_NEW_CLEVIS_PIN_HOLE,
  /** Play of the large clevis pin in the arm of the slack adjuster. */
  PLAY_OF_PIN_IN_ARM,
  /** Play of the gear of the slack adjuster, read at the clevis hole. */
  PLAY_OF_ADJUSTER_GEAR,
  /** Play of the small clevis pin of a linked adjuster. */
  PLAY_OF_SMALL_PIN,
  /** The pitch radius of the camshaft spline. */
  SPLINE_PITCH_RADIUS,
  /** The lift radius of the cam, that of the base circle of its involute. */
  CAM_LIFT_RADIUS,
  /** The thickness of a new lining at the centre of the shoe. */
  NEW_LINING,
  /** The diameter of a new cam roller. */
  NEW_ROLLER,
  /** The diameter of a cam roller where it is worn most. */
  ROLLER,
  /** The rolling radius of the tyre. */
  ROLLING_RADIUS
}
