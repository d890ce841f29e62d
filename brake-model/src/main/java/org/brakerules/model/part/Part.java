package org.brakerules.model.part;

import org.brakerules.model.reading.Station;

/**
 * One part of a brake as it lies on the bench: its tag, the signs a look found, and the readings
 * taken of it.
 *
 * <p>What a part record does not say is not known: a sign left out is {@link Sign#NOT_CHECKED}, a
 * measurement left out has no reading.
 */
public sealed interface Part
    permits AnchorBushing,
        AnchorPin,
        AnchorPinRetainer,
        CamRoller,
        Camshaft,
        CamshaftBracket,
        CamshaftBushing,
        CamshaftSeal,
        Chamber,
        Clevis,
        ClevisPin,
        ControlArm,
        CotterPin,
        Drum,
        DustShield,
        GreaseFitting,
        HeadWasher,
        Hose,
        Hub,
        JamNut,
        Lining,
        PushRod,
        ReturnSpring,
        ReturnSpringPin,
        RollerClip,
        Shim,
        Shoe,
        ShoeRetainingSpring,
        SlackAdjuster,
        SnapRing,
        Spacer,
        Spider,
        SpringBrake,
        ToneRing,
        WheelBearing,
        WheelSeal,
        WheelSpeedSensor {

  /** What every part has, whatever its kind. */
  Tag tag();

  /** Where the part belongs. */
  default Place place() {
    return tag().place();
  }

  /** The kind of part. */
  default PartKind partKind() {
    return tag().place().kind();
  }

  /** The wheel end the part belongs to. */
  default WheelEndPath wheelEnd() {
    return tag().place().wheelEnd();
  }

  /** The wheel end across the axle from the part. */
  default WheelEndPath partner() {
    return wheelEnd().partner();
  }

  /** The station of the part on its wheel end. */
  default Station station() {
    return tag().place().station();
  }

  /** Whether the part is where it belongs. */
  default Presence presence() {
    return tag().presence();
  }

  /** Whether this is the part that was found or a new one. */
  default Condition condition() {
    return tag().condition();
  }
}
