package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;

/** The wheel-speed sensor. */
@PartRecord
public record WheelSpeedSensor(
    Tag tag,
    @Means("sensor not pushed against the ring") Sign notAgainstRing,
    @Means("no signal when the wheel is turned by hand") Sign noSignal,
    @Means("pinched or chafed cable") Sign cablePinched,
    @Means("warning lamp of the anti-lock that stays on") Sign lampOn,
    @Means("gap between sensor and tone ring") @AtMost("1 in") Measurement<Length> gap)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public WheelSpeedSensor {
    tag.require(PartKind.WHEEL_SPEED_SENSOR);
  }

  /** Starts a wheel speed sensor as it was found. */
  public static WheelSpeedSensorBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.WHEEL_SPEED_SENSOR)));
  }

  /** Starts a new wheel speed sensor, fitted in this job. */
  public static WheelSpeedSensorBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.WHEEL_SPEED_SENSOR)));
  }

  /** Starts the wheel speed sensor that carries the tag. */
  public static WheelSpeedSensorBuilder builder(Tag tag) {
    return WheelSpeedSensorBuilder.builder(Blank.of(WheelSpeedSensor.class, tag));
  }
}
